package rallywright.web.progress;

import rallywright.engine.practice.PracticeMinutes;
import rallywright.engine.reading.GainReading;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.SharedEffect;

/**
 * What the scores say about a drill.
 *
 * @param key the drill's key
 * @param name its name
 * @param verdict where it is listed
 * @param chance the chance that those who did more of it rose more
 * @param estimate what ten sessions of a quarter of an hour went along with, as a bar
 * @param played how much it was played
 */
public record GainLine(
    String key,
    String name,
    Verdict verdict,
    String chance,
    rallywright.web.page.Estimate estimate,
    String played) {

  /** Where a drill is listed. Assumptions of this project. */
  public enum Verdict {
    /** Those who did more rose more, with a chance of 95 in 100, and the scores said so. */
    SEEMS_TO_WORK,
    /** Not clear either way. */
    OPEN,
    /** The scores have hardly said anything yet. */
    TOO_EARLY
  }

  private static final double SESSIONS = 10;
  private static final double MINUTES = 15;
  private static final double SURE = 0.95;

  /** Below this part of the doubt before any score, the scores have said something. */
  private static final double HEARD = 0.9;

  private static final rallywright.web.page.Estimate.Scale RALLIES =
      new rallywright.web.page.Estimate.Scale(-10, 10, "10 fewer in 100", "10 more in 100");

  static GainLine of(GainReading gain) {
    Estimate perMinute = gain.perMinute();
    double chance = perMinute.chanceAbove(0);
    boolean heard = perMinute.sd() <= HEARD * gain.before().sd();
    Verdict verdict =
        !heard ? Verdict.TOO_EARLY : chance >= SURE ? Verdict.SEEMS_TO_WORK : Verdict.OPEN;
    double low = rallies(perMinute.low80());
    double high = rallies(perMinute.high80());
    double middle = rallies(perMinute.mean());
    return new GainLine(
        gain.drill().key().value(),
        gain.drill().name(),
        verdict,
        chance(verdict, chance, gain.before().chanceAbove(0)),
        new rallywright.web.page.Estimate(RALLIES, low, middle, high, words(low, middle, high)),
        gain.players()
            + (gain.players() == 1 ? " player, " : " players, ")
            + Math.round(gain.effectiveMinutes())
            + " effective minutes together");
  }

  /** The observation; where the scores said nothing, what was assumed is not sold as one. */
  private static String chance(Verdict verdict, double now, double before) {
    return verdict == Verdict.TOO_EARLY
        ? ("The chance that those who do more of it rise more stands at %s; assumed before any"
                + " score: %s.")
            .formatted(SkillWords.inHundred(now), SkillWords.inHundred(before))
        : "Players who did more of this rose more: chance %s (before any score: %s)."
            .formatted(SkillWords.inHundred(now), SkillWords.inHundred(before));
  }

  /** What a gain per minute comes to in ten sessions, in rallies in 100 from an even start. */
  private static double rallies(double perMinute) {
    double logits = perMinute * SESSIONS * PracticeMinutes.effective(MINUTES);
    return 100 / (1 + Math.exp(-logits)) - 50;
  }

  private static String words(double low, double middle, double high) {
    return "Ten sessions with 15 minutes of it: about %s rallies in 100, likely %s to %s."
        .formatted(signed(middle), signed(low), signed(high));
  }

  private static String signed(double rallies) {
    long whole = Math.round(rallies);
    return whole > 0 ? "+" + whole : whole < 0 ? "−" + -whole : "0";
  }

  /** What is assumed before any score, in the same words. */
  static String before() {
    Estimate first = new Estimate(SharedEffect.GAIN_MEAN, SharedEffect.GAIN_SD);
    return words(rallies(first.low80()), rallies(first.mean()), rallies(first.high80()));
  }
}
