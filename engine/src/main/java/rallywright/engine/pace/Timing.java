package rallywright.engine.pace;

/**
 * How long something takes: mean and spread, in seconds.
 *
 * @param mean the mean in seconds, 0 or more
 * @param variance the variance in square seconds, 0 or more
 */
public record Timing(double mean, double variance) {

  /** No time at all. */
  public static final Timing NOTHING = new Timing(0, 0);

  /** Checks the range; the check is written so that NaN fails it. */
  public Timing {
    if (!(mean >= 0 && variance >= 0 && mean < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "A time needs a mean (%s s) and a variance (%s s²) of 0 or more."
              .formatted(mean, variance));
    }
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
    return new Timing(mean + next.mean, variance + next.variance);
  }

  /**
   * This time several times over, each time anew.
   *
   * @param times 0 or more
   * @return all together
   */
  public Timing repeated(int times) {
    return new Timing(times * mean, times * variance);
  }

  /**
   * This time stretched by a random pace factor with mean 1 that is independent of it.
   *
   * @param cv the factor's standard deviation, 0 or more
   * @return the stretched time: var(FT) = var(T) + cv² E[T²]
   */
  public Timing stretched(double cv) {
    return new Timing(mean, variance + cv * cv * (variance + mean * mean));
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
