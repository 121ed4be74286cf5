package rallywright.engine.pace;

import rallywright.engine.quantity.StandardNormal;

/**
 * A positive time in seconds whose logarithm is normal: short times are common, long ones happen.
 *
 * @param logMean mean of the logarithm of the seconds
 * @param logSd standard deviation of that logarithm, 0 or more
 */
public record LogNormal(double logMean, double logSd) {

  /** Checks the range; the check is written so that NaN fails it. */
  public LogNormal {
    if (!(Double.isFinite(logMean) && logSd >= 0 && logSd < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "A log-normal time needs a finite log mean (%s) and a log spread (%s) of 0 or more."
              .formatted(logMean, logSd));
    }
  }

  /**
   * The log-normal time with this mean and standard deviation.
   *
   * @param meanSeconds above 0
   * @param sdSeconds 0 or more
   * @return the time
   * @throws IllegalArgumentException if a value lies outside
   */
  public static LogNormal of(double meanSeconds, double sdSeconds) {
    if (!(meanSeconds > 0 && sdSeconds >= 0)) {
      throw new IllegalArgumentException(
          "A time needs a mean (%s s) above 0 and a spread (%s s) of 0 or more seconds."
              .formatted(meanSeconds, sdSeconds));
    }
    double cv = sdSeconds / meanSeconds;
    double logVariance = Math.log1p(cv * cv);
    return new LogNormal(Math.log(meanSeconds) - logVariance / 2, Math.sqrt(logVariance));
  }

  /**
   * The mean.
   *
   * @return in seconds
   */
  public double mean() {
    return Math.exp(logMean + logSd * logSd / 2);
  }

  /**
   * The variance.
   *
   * @return in square seconds
   */
  public double variance() {
    double mean = mean();
    return Math.expm1(logSd * logSd) * mean * mean;
  }

  /**
   * This time followed by another, independent one, as the log-normal with the same mean and
   * variance (Fenton 1960, cited from memory).
   *
   * @param next what follows
   * @return both together
   */
  public LogNormal then(LogNormal next) {
    return of(mean() + next.mean(), Math.sqrt(variance() + next.variance()));
  }

  /**
   * The chance that no more than this time is needed.
   *
   * @param seconds any number
   * @return from 0 to 1
   */
  public double within(double seconds) {
    if (!(seconds > 0)) {
      return 0;
    }
    double distance = Math.log(seconds) - logMean;
    return logSd > 0 ? StandardNormal.below(distance / logSd) : distance >= 0 ? 1 : 0;
  }

  /**
   * The time that suffices with a chance.
   *
   * @param chance above 0 and below 1
   * @return in seconds
   */
  public double quantile(double chance) {
    return Math.exp(logMean + logSd * StandardNormal.quantile(chance));
  }
}
