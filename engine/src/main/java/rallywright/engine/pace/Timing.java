package rallywright.engine.pace;

import rallywright.engine.quantity.StandardNormal;

/**
 * How long something takes: mean, spread and lopsidedness, in seconds.
 *
 * @param mean the mean in seconds, 0 or more
 * @param variance the variance in square seconds, 0 or more
 * @param third the third central moment in cubic seconds; above 0 where long times are the rarer
 *     ones
 */
public record Timing(double mean, double variance, double third) {

  /** No time at all. */
  public static final Timing NOTHING = new Timing(0, 0);

  /** Below this skewness the time is as good as normal; it keeps 1/skewness finite. */
  private static final double NO_SKEWNESS = 1e-6;

  /** Checks the range; the check is written so that NaN fails it. */
  public Timing {
    if (!(mean >= 0 && variance >= 0 && mean < Double.POSITIVE_INFINITY)
        || !Double.isFinite(third)) {
      throw new IllegalArgumentException(
          "A time needs a mean (%s s) and a variance (%s s²) of 0 or more and a third moment (%s)."
              .formatted(mean, variance, third));
    }
  }

  /**
   * A time that scatters alike to both sides.
   *
   * @param mean the mean in seconds, 0 or more
   * @param variance the variance in square seconds, 0 or more
   */
  public Timing(double mean, double variance) {
    this(mean, variance, 0);
  }

  /**
   * A time that is known in advance, such as that of a horn.
   *
   * @param seconds 0 or more
   * @return the time, without spread
   */
  public static Timing fixed(double seconds) {
    return new Timing(seconds, 0);
  }

  /**
   * This time followed by another, independent one.
   *
   * @param next what follows
   * @return both together
   */
  public Timing then(Timing next) {
    return new Timing(mean + next.mean, variance + next.variance, third + next.third);
  }

  /**
   * This time several times over, each time anew.
   *
   * @param times 0 or more
   * @return all together
   */
  public Timing repeated(int times) {
    return new Timing(times * mean, times * variance, times * third);
  }

  /**
   * This time stretched by a random pace factor with mean 1 that is independent of it and scatters
   * alike to both sides.
   *
   * @param cv the factor's standard deviation, 0 or more
   * @return the stretched time: var(FT) = var(T) + cv² E[T²], and its third central moment is that
   *     of T + 3cv² (E[T³] - E[T] E[T²])
   */
  public Timing stretched(double cv) {
    double square = variance + mean * mean;
    double cube = third + 3 * mean * variance + mean * mean * mean;
    return new Timing(
        mean, variance + cv * cv * square, third + 3 * cv * cv * (cube - mean * square));
  }

  /**
   * The chance that no more than this time is needed, by the gamma distribution with the same three
   * moments, shifted and if need be mirrored, in the cube root form of Wilson and Hilferty (1931),
   * <em>The distribution of chi-square</em>, PNAS 17:684-688 (cited from memory).
   *
   * @param seconds any number
   * @return from 0 to 1
   */
  public double within(double seconds) {
    double distance = seconds - mean;
    if (!(variance > 0)) {
      return distance >= 0 ? 1 : 0;
    }
    double skewness = third / (variance * sd());
    double z = distance / sd();
    if (Math.abs(skewness) < NO_SKEWNESS) {
      return StandardNormal.below(z);
    }
    double root = Math.cbrt(Math.max(0, 1 + skewness * z / 2));
    return StandardNormal.below((root - 1 + skewness * skewness / 36) * 6 / skewness);
  }

  /**
   * The time that suffices with a chance, by the same distribution as {@link #within}.
   *
   * @param chance above 0 and below 1
   * @return in seconds, 0 or more
   */
  public double quantile(double chance) {
    double z = StandardNormal.quantile(chance);
    double skewness = variance > 0 ? third / (variance * sd()) : 0;
    if (Math.abs(skewness) >= NO_SKEWNESS) {
      double root = 1 + skewness * z / 6 - skewness * skewness / 36;
      z = (root * root * root - 1) * 2 / skewness;
    }
    return Math.max(0, mean + z * sd());
  }

  /**
   * The standard deviation.
   *
   * @return in seconds
   */
  public double sd() {
    return Math.sqrt(variance);
  }
}
