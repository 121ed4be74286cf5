package rallywright.web.progress;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rallywright.engine.reading.SkillReading;

/** A skill reading in a coach's words. */
final class SkillWords {

  static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  /** A change is named only from this chance on. Assumption of this project. */
  private static final double SURE_ENOUGH = 0.8;

  private static final int FEWEST_WEEKS = 2;

  private SkillWords() {}

  /** Where the skill stands, first what can be said, then how sure it is. */
  static String standing(SkillReading reading) {
    if (!reading.enough()) {
      return String.format(
          Locale.ROOT,
          "Too early to tell: %d of about 30 rallies so far.",
          Math.round(reading.rallies()));
    }
    return "About "
        + ten(reading.share())
        + " rallies in 10, likely "
        + ten(reading.lowShare())
        + " to "
        + ten(reading.highShare())
        + ".";
  }

  /** Whether it changed since the first week, never without its chance. */
  static String change(SkillReading reading) {
    if (!reading.enough()
        || reading.chanceOfRise().isEmpty()
        || reading.course().size() <= FEWEST_WEEKS) {
      return "";
    }
    double chance = reading.chanceOfRise().getAsDouble();
    LocalDate since = reading.course().get(0).monday();
    String from = " since the week of " + DAY.format(since) + ".";
    if (chance >= SURE_ENOUGH) {
      return "Rose, with a chance of " + outOf(chance) + "," + from;
    }
    if (chance <= 1 - SURE_ENOUGH) {
      return "Fell, with a chance of " + outOf(1 - chance) + "," + from;
    }
    return "No clear change" + from;
  }

  /** A chance as so many in 100, never 0 or 100. */
  static String inHundred(double chance) {
    return Math.max(1, Math.min(99, Math.round(100 * chance))) + " in 100";
  }

  private static String outOf(double chance) {
    return chance >= 0.95 ? "19 in 20 or more" : Math.round(10 * chance) + " in 10";
  }

  /** A word as a heading begins with it. */
  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A share as so many in ten: whole numbers, never 0 or 10. */
  static long ten(double share) {
    return Math.max(1, Math.min(9, Math.round(10 * share)));
  }
}
