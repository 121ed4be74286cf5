package rallywright.engine.skill;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rallywright.engine.score.Score;

/**
 * The scores to expect of a game that is not played yet, with what is not known about the players
 * in it: wider than the odds of players whose skills were known.
 */
public final class ScoreForecast {
  private static final Comparator<Score> BY_LEAD =
      Comparator.comparingInt((Score score) -> score.a() - score.b()).thenComparingInt(Score::a);

  private final TreeMap<Score, Double> chances = new TreeMap<>(BY_LEAD);

  ScoreForecast(Map<Score, Double> weighted) {
    double sum = weighted.values().stream().mapToDouble(Double::doubleValue).sum();
    weighted.forEach((score, weight) -> chances.put(score, weight / sum));
  }

  /**
   * The chance of a score.
   *
   * @param score a final score
   * @return from 0 to 1
   */
  public double chanceOf(Score score) {
    return chances.getOrDefault(score, 0.0);
  }

  /**
   * The chance that A wins.
   *
   * @return from 0 to 1
   */
  public double winA() {
    return chances.entrySet().stream()
        .filter(entry -> entry.getKey().a() > entry.getKey().b())
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }

  /**
   * The expected points of A.
   *
   * @return points, not rounded
   */
  public double pointsA() {
    return chances.entrySet().stream()
        .mapToDouble(entry -> entry.getKey().a() * entry.getValue())
        .sum();
  }

  /**
   * The expected points of B.
   *
   * @return points, not rounded
   */
  public double pointsB() {
    return chances.entrySet().stream()
        .mapToDouble(entry -> entry.getKey().b() * entry.getValue())
        .sum();
  }

  /**
   * The range that four games in five fall into, from B's best to A's best, scores ordered by A's
   * lead: at most one in ten lies below the first, at most one in ten above the last.
   *
   * @return the first and the last score
   */
  public List<Score> range80() {
    return List.of(quantile(0.1), quantile(0.9));
  }

  private Score quantile(double share) {
    double sum = 0;
    for (Map.Entry<Score, Double> entry : chances.entrySet()) {
      sum += entry.getValue();
      if (sum >= share) {
        return entry.getKey();
      }
    }
    return chances.lastKey();
  }

  /**
   * How surprising a score is: the chance of a score at least as good for A.
   *
   * @param score a final score
   * @return from 0 to 1
   */
  public double chanceOfAtLeast(Score score) {
    return chances.tailMap(score, true).values().stream().mapToDouble(Double::doubleValue).sum();
  }
}
