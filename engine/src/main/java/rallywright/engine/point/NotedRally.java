package rallywright.engine.point;

import java.util.EnumMap;
import java.util.Map;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Stage;

/**
 * A rally of which somebody noted in which stage it ended.
 *
 * @param expectation what was to be expected of it
 * @param stage in which stage it ended
 * @param winner for whom
 */
public record NotedRally(Expectation expectation, Stage stage, Winner winner) {

  /**
   * What the skills lead one to expect of the rallies between the same players: the edges of the
   * server's side and how sure they are.
   *
   * @param edges η by stage, in logits; a stage that is missing is even
   * @param variances the variance of each edge, in logits squared, 0 or more; a stage that is
   *     missing is known
   */
  public record Expectation(Map<Stage, Double> edges, Map<Stage, Double> variances) {
    /** Nobody is ahead, and that is known. */
    public static final Expectation EVEN = new Expectation(Map.of(), Map.of());

    /** Fills in the stages that are missing; the checks are written so that NaN fails them. */
    public Expectation {
      Map<Stage, Double> allEdges = new EnumMap<>(Stage.class);
      Map<Stage, Double> allVariances = new EnumMap<>(Stage.class);
      for (Stage stage : Stage.values()) {
        double edge = edges.getOrDefault(stage, 0.0);
        double variance = variances.getOrDefault(stage, 0.0);
        if (!(Math.abs(edge) < Double.POSITIVE_INFINITY
            && variance >= 0
            && variance < Double.POSITIVE_INFINITY)) {
          throw new IllegalArgumentException(
              "The edge (%s) must be a number, its variance (%s) 0 or more."
                  .formatted(edge, variance));
        }
        allEdges.put(stage, edge);
        allVariances.put(stage, variance);
      }
      edges = Map.copyOf(allEdges);
      variances = Map.copyOf(allVariances);
    }

    /** η of a stage. */
    double edge(Stage stage) {
      return edges.getOrDefault(stage, 0.0);
    }

    /** The variance of η of a stage. */
    double variance(Stage stage) {
      return variances.getOrDefault(stage, 0.0);
    }
  }
}
