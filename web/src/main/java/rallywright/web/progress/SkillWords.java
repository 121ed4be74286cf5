package rallywright.web.progress;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rallywright.engine.reading.SkillChange;
import rallywright.engine.reading.SkillReading;

/** A skill reading in a coach's words. */
final class SkillWords {

  static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  /** A change is named only from this chance on. Assumption of this project. */
  private static final double SURE_ENOUGH = 0.8;

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

  /** What an estimate rests on. */
  static String basis(SkillReading reading) {
    return String.format(
        Locale.ROOT,
        "It rests on about %d rallies and yardstick balls that speak of this skill, in %d weeks,"
            + " and on the level.",
        Math.round(reading.rallies()),
        reading.course().size());
  }

  /** How it changed between two weeks, never without its chance and its interval. */
  static String change(SkillChange change) {
    double chance = change.chanceOfRise();
    if (chance >= SURE_ENOUGH) {
      return "Rose, chance " + outOf(chance) + ": " + amount(change);
    }
    if (chance <= 1 - SURE_ENOUGH) {
      return "Fell, chance " + outOf(1 - chance) + ": " + amount(change);
    }
    return "No clear change (a rise: " + outOf(chance) + "): likely " + range(change) + ".";
  }

  private static String amount(SkillChange change) {
    return "about %s, likely %s.".formatted(more(hundred(change.rise().mean())), range(change));
  }

  private static String range(SkillChange change) {
    return more(hundred(change.rise().low80()))
        + " to "
        + more(hundred(change.rise().high80()))
        + " in 100";
  }

  private static long hundred(double logits) {
    return Math.round(100 * SkillChange.share(logits));
  }

  private static String more(long rallies) {
    return rallies == 0 ? "as many" : Math.abs(rallies) + (rallies > 0 ? " more" : " fewer");
  }

  /** A chance as so many in 100, never 0 or 100. */
  static String inHundred(double chance) {
    return Math.max(1, Math.min(99, Math.round(100 * chance))) + " in 100";
  }

  private static String outOf(double chance) {
    return chance >= 0.95 ? "19 in 20 or more" : Math.max(1, Math.round(10 * chance)) + " in 10";
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
