package rallywright.engine.skill;

import java.util.Map;
import rallywright.engine.score.Score;

/** What scores follow from the chances of a rally, each with its chance. */
@FunctionalInterface
public interface ScoreOutcome {
  /**
   * The final scores and their chances.
   *
   * @param serveA chance that A's side wins a rally that A serves
   * @param serveB chance that B's side wins a rally that B serves
   * @return scores with chances that sum to 1, or a little less where a tie-break has no last score
   */
  Map<Score, Double> given(double serveA, double serveB);
}
