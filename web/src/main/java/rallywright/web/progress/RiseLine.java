package rallywright.web.progress;

import java.util.OptionalInt;
import rallywright.engine.drill.Skill;
import rallywright.engine.skill.Estimate;

/**
 * Whether a skill rose since a day, and how much more play would show it.
 *
 * @param skill the skill in words
 * @param estimate the rallies in 100 against somebody who was even then, as a bar with its sentence
 * @param change whether it changed, in a word or three
 * @param chance how sure that is
 * @param power when a rise of the size that was asked for would show
 */
public record RiseLine(
    String skill,
    rallywright.web.page.Estimate estimate,
    String change,
    String chance,
    String power) {

  private static final double SURE_ENOUGH = 0.8;

  private static final rallywright.web.page.Estimate.Scale SHARES =
      new rallywright.web.page.Estimate.Scale(0.25, 0.75, "25 in 100", "75 in 100");

  static RiseLine of(Skill skill, Estimate rise, RiseSize size, OptionalInt sessions) {
    return new RiseLine(
        SkillWords.capital(skill.words()),
        new rallywright.web.page.Estimate(
            SHARES,
            share(rise.low80()),
            share(rise.mean()),
            share(rise.high80()),
            "About %d rallies in 100 now, likely %d to %d."
                .formatted(hundred(rise.mean()), hundred(rise.low80()), hundred(rise.high80()))),
        change(rise.chanceAbove(0)),
        chance(rise.chanceAbove(0)),
        power(size, sessions));
  }

  private static String change(double chance) {
    return chance >= SURE_ENOUGH
        ? "Rose."
        : chance <= 1 - SURE_ENOUGH ? "Fell." : "No clear change.";
  }

  private static String chance(double chance) {
    return chance <= 1 - SURE_ENOUGH
        ? "The chance that it fell is " + SkillWords.inHundred(1 - chance) + "."
        : "The chance that it rose is " + SkillWords.inHundred(chance) + ".";
  }

  private static String power(RiseSize size, OptionalInt sessions) {
    String rise = "A rise of " + size.rallies() + " rallies in 100 ";
    if (sessions.isEmpty()) {
      return rise
          + "would not show even after 60 more sessions: too little is known of that day. Maybe"
          + " choose a later one, or count a yardstick now and then.";
    }
    return switch (sessions.getAsInt()) {
      case 0 -> rise + "would show already.";
      case 1 -> rise + "would show after one more session like the last ones.";
      default ->
          rise
              + "would show after about "
              + sessions.getAsInt()
              + " more sessions like the last ones.";
    };
  }

  private static double share(double logits) {
    return 1 / (1 + Math.exp(-logits));
  }

  private static long hundred(double logits) {
    return Math.round(100 * share(logits));
  }
}
