package rallywright.engine.reading;

import java.util.Optional;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;

/**
 * What tells most about one skill of a player for the time it takes: a game of a drill, or a
 * yardstick.
 *
 * @param skill the skill
 * @param key the drill's or yardstick's key
 * @param name its name
 * @param opponent against whom it tells most; empty for a yardstick
 * @param minutes how long it takes
 * @param sd how unsure the skill is now, in logits, above 0
 * @param sdAfter how unsure it is expected to be after it, in logits
 */
public record Measure(
    Skill skill,
    DrillKey key,
    String name,
    Optional<PlayerId> opponent,
    double minutes,
    double sd,
    double sdAfter) {

  /** Checks the ranges; the check is written so that NaN fails it. */
  public Measure {
    if (!(minutes > 0 && sdAfter >= 0 && sdAfter <= sd)) {
      throw new IllegalArgumentException(
          "A measure must take time (%s min) and leave no more doubt (%s) than there was (%s)."
              .formatted(minutes, sdAfter, sd));
    }
  }

  /**
   * Whether it is a closed test.
   *
   * @return false for a game
   */
  public boolean isYardstick() {
    return opponent.isEmpty();
  }

  /**
   * The expected drop of the posterior variance for each minute.
   *
   * @return in logits squared, 0 or more
   */
  public double dropPerMinute() {
    return (sd * sd - sdAfter * sdAfter) / minutes;
  }

  /**
   * By which share the doubt is expected to shrink.
   *
   * @return 0 to 1
   */
  public double narrowing() {
    return 1 - sdAfter / sd;
  }
}
