package rallywright.benchmarks.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import rallywright.engine.calibration.Kind;
import rallywright.engine.calibration.RankHistogram;

/**
 * Whether the ranks of all kinds are flat.
 *
 * @param chances of each kind: how likely a χ² at least as large is if the estimates are right
 * @param flat the kinds that Holm's procedure does not reject at {@value #LEVEL}
 */
record Verdict(Map<Kind, Double> chances, List<Kind> flat) {
  /** The chance to find fault anywhere although nothing is wrong. */
  static final double LEVEL = 0.05;

  static Verdict of(Map<Kind, RankHistogram> ranks) {
    Map<Kind, Double> chances = new EnumMap<>(Kind.class);
    ranks.forEach(
        (kind, histogram) ->
            chances.put(
                kind,
                1
                    - new ChiSquaredDistribution(histogram.counts().size() - 1)
                        .cumulativeProbability(histogram.chiSquare())));
    return new Verdict(chances, notRejected(chances));
  }

  /** Holm (1979): from the smallest chance on, reject while chance ≤ level / kinds left. */
  private static List<Kind> notRejected(Map<Kind, Double> chances) {
    List<Kind> left = new ArrayList<>(chances.keySet());
    left.sort(Comparator.comparing(chances::get));
    while (!left.isEmpty() && chances.getOrDefault(left.get(0), 1.0) <= LEVEL / left.size()) {
      left.remove(0);
    }
    return left;
  }
}
