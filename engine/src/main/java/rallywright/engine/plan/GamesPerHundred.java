package rallywright.engine.plan;

import java.util.Objects;
import rallywright.engine.drill.Skill;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.PointWorth;

/**
 * What half a level more in one skill is worth, in games of doubles to 11 out of 100 against an
 * even side: the slope that {@link PointWorth} gives, followed in a straight line.
 */
final class GamesPerHundred {

  private GamesPerHundred() {}

  static double of(PlayerStanding player, Skill skill) {
    double perLogit = Objects.requireNonNull(PointWorth.DOUBLES.of(player).get(skill));
    return 100 * perLogit * PlayerStanding.LOGITS_PER_HALF_LEVEL;
  }
}
