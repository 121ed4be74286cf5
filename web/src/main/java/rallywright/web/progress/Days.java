package rallywright.web.progress;

import java.time.LocalDate;
import java.time.Period;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rallywright.engine.reading.SkillReading.WeekPoint;

/**
 * The weeks of a player from left to right, by true distance in days, so that a break of a month is
 * a month wide.
 *
 * @param stops every Monday from the first week with scores to this one, oldest first
 */
public record Days(List<LocalDate> stops) {

  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
  private static final int FEWEST_MONTHS = 2;
  private static final double LEAST_GAP = 0.09;

  /**
   * A date written under the axis.
   *
   * @param part where it stands, from 0 (left) to 1 (right)
   * @param words the date in a few letters
   */
  public record Tick(double part, String words) {}

  /** Copies the list; there is always this week. */
  public Days {
    stops = List.copyOf(stops);
    if (stops.isEmpty()) {
      throw new IllegalArgumentException("There must be a week to show.");
    }
  }

  /** All weeks from the first to the last of a skill. */
  static Days of(List<WeekPoint> course) {
    LocalDate first = course.get(0).monday();
    LocalDate last = course.get(course.size() - 1).monday();
    return new Days(first.datesUntil(last.plusDays(1), Period.ofWeeks(1)).toList());
  }

  /** Whether there are two weeks to compare. */
  public boolean span() {
    return stops.size() > 1;
  }

  /** The first Monday. */
  public LocalDate first() {
    return stops.get(0);
  }

  /** The last Monday. */
  public LocalDate last() {
    return stops.get(stops.size() - 1);
  }

  /** Where a day stands, from 0 to 1; days outside are drawn at the end. */
  public double part(LocalDate day) {
    long all = ChronoUnit.DAYS.between(first(), last());
    double part = all == 0 ? 1 : (double) ChronoUnit.DAYS.between(first(), day) / all;
    return Math.max(0, Math.min(1, part));
  }

  /** The number of the last stop until a day; the first for days before it. */
  public int stop(LocalDate day) {
    int found = 0;
    for (int i = 0; i < stops.size(); i++) {
      if (!stops.get(i).isAfter(day)) {
        found = i;
      }
    }
    return found;
  }

  /** Beginnings of months where there are some, else the first and the last week. */
  public List<Tick> ticks() {
    List<Tick> months = new ArrayList<>();
    LocalDate month = first().withDayOfMonth(1);
    double before = -1;
    for (; !month.isAfter(last()); month = month.plusMonths(1)) {
      if (!month.isBefore(first()) && part(month) - before >= LEAST_GAP) {
        months.add(new Tick(part(month), MONTH.format(month)));
        before = part(month);
      }
    }
    if (months.size() >= FEWEST_MONTHS) {
      return months;
    }
    return List.of(new Tick(0, SHORT.format(first())), new Tick(1, SHORT.format(last())));
  }

  /** The stops as the script on the page reads them: day, place and words of each. */
  public String forScript() {
    List<String> all = new ArrayList<>();
    for (LocalDate stop : stops) {
      all.add(
          String.format(
              Locale.ROOT,
              "%s/%.4f/%s",
              stop,
              part(stop),
              "week of " + SkillWords.DAY.format(stop)));
    }
    return String.join(";", all);
  }
}
