package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Means and variances of all latents after a {@link LaplaceFit}, worked out when they are asked
 * for, group by group.
 *
 * <p>Mean: the mode plus ½ H⁻¹ Σ (third derivative of the log-likelihood of a term, contracted with
 * the covariance of its predictors), the first correction of Laplace's method for a mean. It costs
 * one solve, as the covariances of the predictors come with the selected inverse. Reference:
 * Tierney and Kadane (1986); Rue, Martino and Chopin, JRSS-B 71 (2009), section 3.2.
 */
final class Moments {
  private final LaplaceFit fit;
  private final double[][] borderCovariance;
  private final Map<Integer, Spread> spreads = new ConcurrentHashMap<>();
  private final Map<Integer, double[]> means = new ConcurrentHashMap<>();
  private double @Nullable [] borderShift;

  private Moments(LaplaceFit fit) {
    this.fit = fit;
    borderCovariance = fit.curvature().border().inverse();
  }

  static Moments of(LaplaceFit fit) {
    return new Moments(fit);
  }

  /**
   * The moments of a fit of which resting groups keep the spreads that they had. The shift of what
   * all share, itself a few thousandths, is kept too: one session does not change it noticeably.
   *
   * @param before the moments from which they came
   * @param numberBefore for each group its number there, or −1 where it is new or heard something
   */
  static Moments after(Moments before, LaplaceFit fit, int[] numberBefore) {
    Moments moments = new Moments(fit);
    moments.borderShift = before.borderShift();
    for (int part = 0; part < numberBefore.length; part++) {
      Spread spread = numberBefore[part] < 0 ? null : before.spreads.get(numberBefore[part]);
      if (spread != null) {
        moments.spreads.put(part, spread);
      }
    }
    return moments;
  }

  /** The spread of a group. */
  Spread spread(int part) {
    return spreads.computeIfAbsent(part, each -> Spread.of(fit, each, borderCovariance));
  }

  /** The covariances of the border; not to be changed. */
  double[][] borderCovariance() {
    return borderCovariance;
  }

  double borderVariance(int i) {
    return borderCovariance[i][i];
  }

  /** The corrected mean of a border latent. */
  double borderMean(int i) {
    return fit.point().border()[i] + borderShift()[i];
  }

  private synchronized double[] borderShift() {
    if (borderShift == null) {
      int parts = fit.assembly().parts();
      IntStream.range(0, parts).parallel().forEach(this::spread);
      double[] left = new double[borderCovariance.length];
      for (int part = 0; part < parts; part++) {
        double[] pull = spread(part).pull();
        for (int i = 0; i < left.length; i++) {
          left[i] += pull[pull.length - left.length + i];
        }
      }
      borderShift = fit.curvature().border().solve(left);
    }
    return borderShift;
  }

  /** The corrected means of a group and of the border behind it; not to be changed. */
  double[] mean(int part) {
    return means.computeIfAbsent(part, this::corrected);
  }

  private double[] corrected(int part) {
    double[] shift = spread(part).pull().clone();
    double[] border = borderShift();
    System.arraycopy(border, 0, shift, shift.length - border.length, border.length);
    fit.curvature().factor(part).backward(shift);
    double[] mode = fit.settled(part);
    for (int i = 0; i < mode.length; i++) {
      shift[i] += mode[i];
    }
    return shift;
  }

  /** What groups know of their own share of the evidence that spans groups. */
  Outside outside() {
    List<CrossTerm> cross = fit.assembly().cross();
    double[][][] within = new double[cross.size()][][];
    List<List<int[]>> byPart = new ArrayList<>();
    for (int part = 0; part < fit.assembly().parts(); part++) {
      byPart.add(new ArrayList<>());
    }
    for (int i = 0; i < within.length; i++) {
      within[i] = new double[cross.get(i).cuts().size()][];
      for (int j = 0; j < within[i].length; j++) {
        byPart.get(cross.get(i).cuts().get(j).part()).add(new int[] {i, j});
      }
    }
    IntStream.range(0, byPart.size())
        .parallel()
        .forEach(
            part -> {
              List<double[]> variances = spread(part).cutVariances();
              for (int k = 0; k < variances.size(); k++) {
                int[] at = byPart.get(part).get(k);
                within[at[0]][at[1]] = variances.get(k);
              }
            });
    return Outside.of(within);
  }
}
