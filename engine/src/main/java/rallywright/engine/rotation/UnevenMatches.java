package rallywright.engine.rotation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.odds.FairGame.HeadStart;
import rallywright.engine.odds.HeadStartSearch;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;

/**
 * Head starts for matches that stay uneven.
 *
 * <p>The strength of two partners is the mean of the two. The stronger side wins a rally with the
 * chance 1 / (1 + exp(-difference)), whoever serves: what the serve itself is worth is left out
 * (assumption of this project).
 */
final class UnevenMatches {

  /** Smaller differences than this are left alone: about 6 rallies in 10. */
  static final double EVEN_ENOUGH_LOGITS = 0.4;

  /** Differences are told apart in steps of this many logits, so that results can be kept. */
  private static final double STEP = 0.05;

  private final GameFormat format;
  private final Map<Long, HeadStart> found = new HashMap<>();

  UnevenMatches(GameFormat format) {
    this.format = format;
  }

  /** The difference of two sides in logits, positive if a is stronger; 0 where b is nobody. */
  static double difference(List<Double> a, List<Double> b) {
    return b.isEmpty() ? 0 : mean(a) - mean(b);
  }

  private static double mean(List<Double> strengths) {
    return strengths.stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }

  /** What makes a match even, nothing if it is even enough. */
  HeadStart headStart(double difference) {
    if (Math.abs(difference) <= EVEN_ENOUGH_LOGITS) {
      return RotationMatch.EVEN;
    }
    return found.computeIfAbsent(Math.round(difference / STEP), this::search);
  }

  private HeadStart search(long steps) {
    return HeadStartSearch.bestHeadStart(format, chances(format, STEP * steps), Probability.EVEN);
  }

  /** What sides that differ by so many logits have in each rally. */
  static RallyChances chances(GameFormat format, double difference) {
    Probability a = Probability.of(1 / (1 + Math.exp(-difference)));
    return format.scoring().everyRallyScores()
        ? RallyChances.ofRally(a)
        : RallyChances.ofServe(a, a.complement());
  }
}
