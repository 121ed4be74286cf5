package rallywright.engine.point;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.point.NotedRally.Expectation;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.point.StageContest.Tilt;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.skill.Estimate;

/**
 * Of the rallies that a side loses: how many are lost in which stage, as the skills and the club's
 * endings lead one to expect, and how sure that is.
 *
 * <p>Method: the shares follow from {@link RallyChain}; their variance from the exact derivatives
 * by the edges (whose variance the skills give), by the stages' base logits ({@link
 * StageLearning.Spread}) and by what the model leaves out ({@link #LEFT_OUT_SD}). Edges are taken
 * as independent of one another, which overstates the variance of shares, as skills of a player
 * rise together.
 */
final class ExpectedEndings {

  /** How far a stage may lie from the model for reasons that it leaves out: an assumption. */
  static final double LEFT_OUT_SD = 0.15;

  private final StageLearning learning;
  private final Winner loser;
  private final Map<Expectation, Map<Stage, Estimate>> known = new LinkedHashMap<>();

  ExpectedEndings(StageLearning learning, Winner loser) {
    this.learning = learning;
    this.loser = loser;
  }

  /** The mean share of a stage over some lost rallies; its SD as if all erred together. */
  Estimate share(Stage stage, List<NotedRally> lost) {
    double mean = 0;
    double sd = 0;
    for (NotedRally rally : lost) {
      Estimate one =
          known
              .computeIfAbsent(rally.expectation(), this::shares)
              .getOrDefault(stage, new Estimate(0, 0));
      mean += one.mean() / lost.size();
      sd += one.sd() / lost.size();
    }
    return new Estimate(mean, sd);
  }

  private Map<Stage, Estimate> shares(Expectation expectation) {
    RallyChain chain = RallyChain.of(learning.stages(), expectation.edges());
    double lost = 0;
    for (Stage end : Stage.values()) {
      lost += chain.endsIn(end, loser.loser());
    }
    Map<Stage, Double> variances = new EnumMap<>(Stage.class);
    for (Stage moved : Stage.values()) {
      double ofEdge = expectation.variance(moved) + LEFT_OUT_SD * LEFT_OUT_SD;
      Map<Stage, Double> byEdge = shareSlopes(chain, lost, moved, Tilt.EDGE);
      Map<Stage, Double> byServer = shareSlopes(chain, lost, moved, Tilt.SERVER);
      Map<Stage, Double> byReceiver = shareSlopes(chain, lost, moved, Tilt.RECEIVER);
      StageLearning.Spread spread = learning.spread(moved);
      for (Stage end : Stage.values()) {
        double edge = byEdge.getOrDefault(end, 0.0);
        double base =
            spread.along(byServer.getOrDefault(end, 0.0), byReceiver.getOrDefault(end, 0.0));
        variances.merge(end, edge * edge * ofEdge + base, Double::sum);
      }
    }
    Map<Stage, Estimate> shares = new EnumMap<>(Stage.class);
    for (Stage end : Stage.values()) {
      double sd = Math.sqrt(Math.max(0, variances.getOrDefault(end, 0.0)));
      shares.put(end, new Estimate(chain.endsIn(end, loser.loser()) / lost, sd));
    }
    return shares;
  }

  /** Derivatives of the shares by the logits of one stage. */
  private Map<Stage, Double> shareSlopes(RallyChain chain, double lost, Stage moved, Tilt tilt) {
    Map<Stage, Double> slopes = new EnumMap<>(Stage.class);
    double all = 0;
    for (Stage end : Stage.values()) {
      double slope = chain.slopeOfEnd(end, loser.loser(), moved, tilt);
      slopes.put(end, slope);
      all += slope;
    }
    double together = all;
    slopes.replaceAll(
        (end, slope) -> (slope - chain.endsIn(end, loser.loser()) / lost * together) / lost);
    return slopes;
  }
}
