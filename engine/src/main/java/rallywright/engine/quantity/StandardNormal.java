package rallywright.engine.quantity;

/**
 * The normal distribution with mean 0 and standard deviation 1.
 *
 * <p>For the maintainer: below 3 in absolute value the distribution is summed by the series of odd
 * powers, beyond by the continued fraction of Mills' ratio; both are textbook forms (Abramowitz and
 * Stegun 26.2.11 and 26.2.14, cited from memory). The quantile is found by halving the interval, so
 * it is as exact as the distribution.
 */
public final class StandardNormal {

  private static final double SERIES_UP_TO = 3;
  private static final double FARTHEST = 38;

  /** So many terms, and so many over z² more, leave nothing that a double can hold. */
  private static final double FEWEST_TERMS = 10;

  private static final double TERMS_NEAR_NOUGHT = 630;

  private StandardNormal() {}

  /**
   * The density.
   *
   * @param z any number
   * @return the density at z
   */
  public static double density(double z) {
    return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
  }

  /**
   * The chance of a value of at most z.
   *
   * @param z any number
   * @return from 0 to 1
   * @throws IllegalArgumentException if z is not a number
   */
  public static double below(double z) {
    if (Double.isNaN(z)) {
      throw new IllegalArgumentException("The value must be a number, but was NaN.");
    }
    if (Math.abs(z) < SERIES_UP_TO) {
      return 0.5 + density(z) * oddSeries(z);
    }
    double tail = Math.abs(z) > FARTHEST ? 0 : density(z) / fraction(Math.abs(z));
    return z < 0 ? tail : 1 - tail;
  }

  private static double oddSeries(double z) {
    double term = z;
    double sum = z;
    for (int n = 3; Math.abs(term) > 1e-17 * Math.abs(sum); n += 2) {
      term *= z * z / n;
      sum += term;
    }
    return sum;
  }

  private static double fraction(double z) {
    double value = z;
    int terms = (int) (FEWEST_TERMS + TERMS_NEAR_NOUGHT / (z * z));
    for (int n = terms; n >= 1; n--) {
      value = z + n / value;
    }
    return value;
  }

  /**
   * The value that is not exceeded with a chance.
   *
   * @param chance above 0 and below 1
   * @return the value, for example 1.2816 for 0.9
   * @throws IllegalArgumentException if the chance lies outside
   */
  public static double quantile(double chance) {
    if (!(chance > 0 && chance < 1)) {
      throw new IllegalArgumentException(
          "The chance (%s) must lie between 0 and 1. Maybe 0.9.".formatted(chance));
    }
    double low = -FARTHEST;
    double high = FARTHEST;
    while (high - low > 1e-13) {
      double middle = (low + high) / 2;
      if (below(middle) < chance) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
