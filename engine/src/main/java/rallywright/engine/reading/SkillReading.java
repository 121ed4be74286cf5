package rallywright.engine.reading;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import rallywright.engine.drill.Skill;
import rallywright.engine.skill.Estimate;

/**
 * What is known of one skill of one player.
 *
 * @param skill the skill
 * @param now today's estimate in logits
 * @param reference the mean of the club's players in this skill, in logits
 * @param rallies how many rallies and yardstick balls speak of it, weighted by the role
 * @param enough whether there are enough of them to say more than "too early to tell"
 * @param course the estimate of each week with evidence, and of this week
 * @param chanceOfRise the chance that it is higher than in the first of these weeks; empty where
 *     there is only one
 */
public record SkillReading(
    Skill skill,
    Estimate now,
    double reference,
    double rallies,
    boolean enough,
    List<WeekPoint> course,
    OptionalDouble chanceOfRise) {

  /**
   * The estimate of one week.
   *
   * @param monday the week's Monday
   * @param estimate mean and SD in logits
   */
  public record WeekPoint(LocalDate monday, Estimate estimate) {}

  /** Copies the list. */
  public SkillReading {
    course = List.copyOf(course);
  }

  /**
   * The share of rallies that turn on this skill which the player would win against the club's
   * average player, as now estimated.
   *
   * @return 0 to 1
   */
  public double share() {
    return shareAt(now.mean());
  }

  /**
   * The lower end of the 80 % interval of {@link #share()}.
   *
   * @return 0 to 1
   */
  public double lowShare() {
    return shareAt(now.low80());
  }

  /**
   * The upper end of the 80 % interval of {@link #share()}.
   *
   * @return 0 to 1
   */
  public double highShare() {
    return shareAt(now.high80());
  }

  /**
   * The share of rallies that a value of the skill would win against the club's average player.
   *
   * @param logits the skill
   * @return 0 to 1
   */
  public double shareAt(double logits) {
    return 1 / (1 + Math.exp(reference - logits));
  }
}
