package rallywright.engine.plan;

import java.util.List;
import java.util.Map;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Skill;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Side;

/**
 * Who is favoured in the rallies of a game, in log odds beside the drill's role advantage: the
 * difference of the two players' skills, each weighted as the role asks.
 *
 * @param first how far the first side is ahead in its role; in a full game, while it serves
 * @param swapped how far the second side is ahead once the roles are swapped: while it serves
 */
record Matchup(double first, double swapped) {

  /** Two players of the same skill. */
  static final Matchup EQUALS = new Matchup(0, 0);

  /** Chances are told apart in steps of this many logits, so that results can be kept. */
  private static final double STEP = 0.05;

  static Matchup of(DrillForm.Scored game, PlayerStanding a, PlayerStanding b) {
    return of(game, List.of(a), List.of(b));
  }

  /** Partners count as the mean of the two. */
  static Matchup of(DrillForm.Scored game, List<PlayerStanding> a, List<PlayerStanding> b) {
    return new Matchup(
        stepped(strength(game, Side.A, a) - strength(game, Side.B, b)),
        stepped(strength(game, Side.A, b) - strength(game, Side.B, a)));
  }

  private static double strength(DrillForm.Scored game, Side side, List<PlayerStanding> players) {
    double sum = 0;
    for (PlayerStanding each : players) {
      sum += strength(game, side, each);
    }
    return sum / players.size();
  }

  private static double stepped(double logits) {
    return Math.rint(logits / STEP) * STEP;
  }

  private static double strength(DrillForm.Scored game, Side side, PlayerStanding player) {
    DrillSide role = game.layout().sides().of(side);
    double sum = 0;
    for (Map.Entry<Skill, Double> share : role.weights().shares().entrySet()) {
      sum += share.getValue() * player.in(share.getKey()).mean();
    }
    return sum;
  }

  /** The strength of a player in a drill in logits, the mean over its two roles. */
  static double strength(DrillForm.Scored game, PlayerStanding player) {
    return (strength(game, Side.A, player) + strength(game, Side.B, player)) / 2;
  }

  /**
   * The chances of a rally. Where only the server scores, the first role is the server's, so the
   * advantage goes with the serve.
   */
  RallyChances chances(DrillForm.Scored game) {
    double advantage = game.advantage().logit();
    if (game.format().scoring() == Scoring.EVERY_RALLY) {
      return RallyChances.ofRally(logistic(advantage + first));
    }
    return RallyChances.ofServe(logistic(advantage + first), logistic(advantage + swapped));
  }

  private static Probability logistic(double logits) {
    return Probability.of(1 / (1 + Math.exp(-logits)));
  }
}
