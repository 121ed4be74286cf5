package rallywright.engine.reading;

import rallywright.engine.drill.Skill;
import rallywright.engine.reading.SkillReading.WeekPoint;
import rallywright.engine.skill.Estimate;

/**
 * How a skill changed between two weeks, with what the two weeks have in common taken into account:
 * two wide bands that overlap may still hide a sure rise.
 *
 * @param skill the skill
 * @param from the earlier week
 * @param to the later week
 * @param rise later less earlier, in logits
 */
public record SkillChange(Skill skill, WeekPoint from, WeekPoint to, Estimate rise) {

  /**
   * The chance that the skill is higher in the later week.
   *
   * @return 0 to 1
   */
  public double chanceOfRise() {
    return rise.chanceAbove(0);
  }

  /**
   * What a rise means in rallies that turn on this skill, against a player who stands between the
   * two weeks: half of the rise is put on each side of an even rally. So the answer does not hang
   * on how good the club's average player is.
   *
   * @param logits a rise, negative for a fall
   * @return how much larger the share of rallies won is, -1 to 1
   */
  public static double share(double logits) {
    return Math.tanh(logits / 4);
  }
}
