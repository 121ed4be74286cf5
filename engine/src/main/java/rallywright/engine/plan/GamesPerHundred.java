package rallywright.engine.plan;

import java.util.Map;
import java.util.Objects;
import rallywright.engine.drill.Skill;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.PointWorth;

/**
 * What half a level more in one skill is worth, in games of doubles to 11 out of 100 against an
 * even side: the slope that {@link PointWorth} gives, followed in a straight line.
 */
final class GamesPerHundred {

  private final Map<Skill, Double> perLogit;

  /** By what each skill is worth in doubles, in games won per logit. */
  GamesPerHundred(Map<Skill, Double> perLogit) {
    this.perLogit = perLogit;
  }

  /** Of one player, for all skills at once. */
  static GamesPerHundred of(PlayerStanding player) {
    return new GamesPerHundred(PointWorth.DOUBLES.of(player));
  }

  double in(Skill skill) {
    return 100 * Objects.requireNonNull(perLogit.get(skill)) * PlayerStanding.LOGITS_PER_HALF_LEVEL;
  }
}
