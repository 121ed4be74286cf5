package rallywright.engine.skill;

/** The standard normal distribution. */
final class Normal {
  /** Beyond this many SDs the chance differs from 0 or 1 by less than 1e-22. */
  private static final double FAR = 9.7;

  private Normal() {}

  /**
   * The chance of a value below z, absolute error below 1e-15.
   *
   * <p>Method: Taylor series of the integral, all terms of one sign. Reference: Marsaglia,
   * Evaluating the normal distribution, Journal of Statistical Software 11(4) (2004).
   */
  static double below(double z) {
    if (Math.abs(z) > FAR) {
      return z > 0 ? 1 : 0;
    }
    double term = z;
    double sum = z;
    for (int k = 3; sum + term != sum; k += 2) {
      term *= z * z / k;
      sum += term;
    }
    return 0.5 + sum * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
  }
}
