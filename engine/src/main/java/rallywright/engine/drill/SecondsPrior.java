package rallywright.engine.drill;

/**
 * A time that is never negative and has a long tail: log-normal.
 *
 * @param mean the mean in seconds, 0.5 to 120
 * @param sd the standard deviation in seconds, above 0 and at most 120
 */
public record SecondsPrior(double mean, double sd) {

  private static final double SHORTEST = 0.5;
  private static final double LONGEST = 120;

  /** Checks the ranges; the checks are written so that NaN fails them. */
  public SecondsPrior {
    if (!(mean >= SHORTEST && mean <= LONGEST)) {
      throw new IllegalArgumentException(
          "The mean time (%s s) must lie from 0.5 to 120 seconds. Maybe 8.".formatted(mean));
    }
    if (!(sd > 0 && sd <= LONGEST)) {
      throw new IllegalArgumentException(
          "The spread of the time (%s s) must lie above 0 and at most at 120 seconds. Maybe 5."
              .formatted(sd));
    }
  }

  /**
   * The mean of the logarithm: ln m − s²/2 with s² from {@link #logSd()}.
   *
   * @return natural logarithm of seconds
   */
  public double logMean() {
    double logSd = logSd();
    return Math.log(mean) - logSd * logSd / 2;
  }

  /**
   * The standard deviation of the logarithm: √ln(1 + (sd/mean)²).
   *
   * @return dimensionless, above 0
   */
  public double logSd() {
    double ratio = sd / mean;
    return Math.sqrt(Math.log1p(ratio * ratio));
  }
}
