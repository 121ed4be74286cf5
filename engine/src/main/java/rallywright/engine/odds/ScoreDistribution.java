package rallywright.engine.odds;

import java.util.List;
import rallywright.engine.score.Score;

/**
 * The chances of the final scores.
 *
 * @param scores every possible final score with its chance; first the ones that A wins, each side's
 *     wins by the points of both
 * @param tail the chance of all scores of a long tie-break that are not listed, below 1e-12
 */
public record ScoreDistribution(List<ScoreChance> scores, double tail) {

  /** Keeps its own copy of the list. */
  public ScoreDistribution {
    scores = List.copyOf(scores);
  }

  /**
   * A final score and its chance.
   *
   * @param score the final score
   * @param chance from 0 to 1
   */
  public record ScoreChance(Score score, double chance) {}

  /**
   * The chance of one final score.
   *
   * @param score the score
   * @return its chance, 0 where it is not listed
   */
  public double chanceOf(Score score) {
    return scores.stream()
        .filter(listed -> listed.score().equals(score))
        .mapToDouble(ScoreChance::chance)
        .sum();
  }
}
