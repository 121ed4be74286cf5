package rallywright.engine.plan;

import rallywright.engine.drill.Skill;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SkillWorth;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Side;

/**
 * What half a level more in one skill is worth, in games of doubles to 11 out of 100 against an
 * even side.
 *
 * <p>The skill's share of the rallies times half a level in logits, halved because a partner plays
 * too, shifts every rally; the exact odds of the game do the rest. Between even sides the serving
 * side wins about 45 rallies in 100 (assumption of this project).
 */
final class GamesPerHundred {

  private static final double SERVING_LOGIT = -0.2;

  private GamesPerHundred() {}

  static double of(PlayerStanding player, Skill skill, SkillWorth worth) {
    double all = 0;
    for (Skill each : Skill.values()) {
      all += worth.of(player, each);
    }
    double share = all > 0 ? worth.of(player, skill) / all : 0;
    double shift = share * PlayerStanding.LOGITS_PER_HALF_LEVEL / 2;
    return 100 * (winChance(shift) - winChance(0));
  }

  private static double winChance(double shift) {
    RallyChances chances =
        RallyChances.ofServe(logistic(SERVING_LOGIT + shift), logistic(SERVING_LOGIT - shift));
    return GameOdds.of(GameFormat.DOUBLES_TO_11, chances).winChance(Side.A);
  }

  private static Probability logistic(double logits) {
    return Probability.of(1 / (1 + Math.exp(-logits)));
  }
}
