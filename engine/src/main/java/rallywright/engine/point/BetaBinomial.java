package rallywright.engine.point;

/**
 * A count of n where the chance of each is itself not known exactly: beta with a mean and a
 * variance.
 *
 * <p>P(x) = C(n, x) B(x + a, n − x + b) / B(a, b); summed by the ratio of neighbours, which needs
 * no gamma function. Where the variance is 0 it is the binomial distribution.
 */
final class BetaBinomial {

  /** A larger share of the greatest possible variance than this is taken for this much. */
  private static final double MOST_OF_THE_VARIANCE = 0.9;

  private final double[] chances;

  private BetaBinomial(double[] chances) {
    this.chances = chances;
  }

  /** The distribution of a count. */
  static BetaBinomial of(int n, double mean, double variance) {
    if (!(n >= 0 && mean > 0 && mean < 1 && variance >= 0)) {
      throw new IllegalArgumentException(
          "A count of %d with a chance of %s (variance %s) makes no sense."
              .formatted(n, mean, variance));
    }
    double most = MOST_OF_THE_VARIANCE * mean * (1 - mean);
    double taken = Math.min(variance, most);
    double size = taken > 0 ? mean * (1 - mean) / taken - 1 : Double.POSITIVE_INFINITY;
    double[] logs = new double[n + 1];
    double largest = 0;
    for (int x = 0; x < n; x++) {
      logs[x + 1] = logs[x] + Math.log((double) (n - x) / (x + 1)) + logOdds(x, n, mean, size);
      largest = Math.max(largest, logs[x + 1]);
    }
    double sum = 0;
    for (int x = 0; x <= n; x++) {
      logs[x] = Math.exp(logs[x] - largest);
      sum += logs[x];
    }
    for (int x = 0; x <= n; x++) {
      logs[x] /= sum;
    }
    return new BetaBinomial(logs);
  }

  /** Log of (x + a) / (n − x − 1 + b). */
  private static double logOdds(int x, int n, double mean, double size) {
    return Double.isInfinite(size)
        ? Math.log(mean / (1 - mean))
        : Math.log((x + mean * size) / (n - x - 1 + (1 - mean) * size));
  }

  double of(int count) {
    return chances[count];
  }

  /** The chance of so many or more. */
  double atLeast(int count) {
    double sum = 0;
    for (int x = chances.length - 1; x >= count; x--) {
      sum += chances[x];
    }
    return Math.min(1, sum);
  }
}
