package rallywright.engine.calibration;

import java.util.Arrays;
import java.util.List;

/**
 * How often the rank of the truth among draws from the estimate fell into each of equally wide
 * bins: flat if the estimates are right, ∪ if they are too sure, ∩ if they are not sure enough,
 * sloping if they lie too low or too high.
 *
 * @param counts clubs in each bin
 */
public record RankHistogram(List<Integer> counts) {
  /** Copies the list. */
  public RankHistogram {
    counts = List.copyOf(counts);
  }

  /**
   * The ranks of one kind.
   *
   * @param clubs one rank each
   * @param kind the kind
   * @param bins how many; a divisor of 1000, so that all are equally wide
   * @return the histogram
   * @throws IllegalArgumentException if the bins would not be equally wide
   */
  public static RankHistogram of(List<ClubCheck> clubs, Kind kind, int bins) {
    int ranks = ClubCheck.DRAWS + 1;
    if (!(bins > 1 && ranks % bins == 0)) {
      throw new IllegalArgumentException(
          "The number of bins (" + bins + ") must divide " + ranks + ". Maybe 20.");
    }
    Integer[] counts = new Integer[bins];
    Arrays.fill(counts, 0);
    clubs.forEach(club -> counts[club.rank(kind) / (ranks / bins)]++);
    return new RankHistogram(List.of(counts));
  }

  /**
   * Pearson's statistic against a flat histogram. If the estimates are right it follows χ² with one
   * degree of freedom less than there are bins.
   *
   * @return 0 or more
   */
  public double chiSquare() {
    double expected = counts.stream().mapToInt(Integer::intValue).sum() / (double) counts.size();
    return counts.stream().mapToDouble(n -> (n - expected) * (n - expected) / expected).sum();
  }
}
