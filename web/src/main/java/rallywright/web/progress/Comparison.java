package rallywright.web.progress;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import rallywright.web.page.Form;
import rallywright.web.page.FormProblems;
import rallywright.web.page.FormReader;

/**
 * The two days between which the skills of a player are compared.
 *
 * @param from the earlier day
 * @param to the later day
 * @param form what stands in the two fields and what is wrong with it; with a mistake the first and
 *     the last week are compared
 * @param days the weeks to choose from
 */
public record Comparison(LocalDate from, LocalDate to, Form form, Days days) {

  /** The name of the first field. */
  public static final String FROM = "from";

  /** The name of the second field. */
  public static final String TO = "to";

  /** The days that were asked for, by default the first week and this one. */
  static Comparison of(Days days, String from, String to) {
    FormProblems problems = FormProblems.none();
    LocalDate first = days.first();
    LocalDate last = days.last();
    try {
      first = from.isBlank() ? first : LocalDate.parse(from.strip());
    } catch (DateTimeParseException unreadable) {
      problems = problems.with(FROM, unreadable("first", from, days));
    }
    try {
      last = to.isBlank() ? last : LocalDate.parse(to.strip());
    } catch (DateTimeParseException unreadable) {
      problems = problems.with(TO, unreadable("second", to, days));
    }
    if (problems.isEmpty() && first.isAfter(last)) {
      problems =
          problems.with(
              FROM,
              "The first date (%s) must not be after the second (%s). Maybe change them over."
                  .formatted(first, last));
    }
    Form form =
        Form.of(
            Map.of(
                FROM, List.of(from.isBlank() ? first.toString() : FormReader.echo(from.strip())),
                TO, List.of(to.isBlank() ? last.toString() : FormReader.echo(to.strip()))),
            problems);
    return problems.isEmpty()
        ? new Comparison(first, last, form, days)
        : new Comparison(days.first(), days.last(), form, days);
  }

  private static String unreadable(String which, String seen, Days days) {
    return "The %s date (%s) must be a day written like %s. Maybe choose it from the calendar."
        .formatted(which, FormReader.echo(seen), days.last());
  }

  /** The number of the earlier week among those to choose from. */
  public int fromStop() {
    return days.stop(from);
  }

  /** The number of the later week among those to choose from. */
  public int toStop() {
    return days.stop(to);
  }

  /** The Monday of the earlier week. */
  public LocalDate fromMonday() {
    return days.stops().get(fromStop());
  }

  /** The Monday of the later week. */
  public LocalDate toMonday() {
    return days.stops().get(toStop());
  }

  /** A week to choose, in words. */
  public String weekWords(int stop) {
    return "week of " + SkillWords.DAY.format(days.stops().get(stop));
  }

  /** Which weeks are compared, in words. */
  public String words() {
    if (fromStop() >= toStop()) {
      return "The same week speaks of both dates, so there is nothing to compare. Maybe choose"
          + " dates further apart.";
    }
    return "From the week of "
        + SkillWords.DAY.format(fromMonday())
        + " to the week of "
        + SkillWords.DAY.format(toMonday())
        + ".";
  }
}
