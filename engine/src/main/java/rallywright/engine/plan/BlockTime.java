package rallywright.engine.plan;

/**
 * How long something takes, in minutes.
 *
 * @param mean the mean in minutes, 0 or more
 * @param sd the standard deviation in minutes, 0 or more
 */
public record BlockTime(double mean, double sd) {

  /** Checks the range; the check is written so that NaN fails it. */
  public BlockTime {
    if (!(mean >= 0 && sd >= 0 && mean < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "A time needs a mean (" + mean + ") and a spread (" + sd + ") of 0 minutes or more.");
    }
  }
}
