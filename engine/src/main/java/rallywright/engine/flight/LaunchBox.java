package rallywright.engine.flight;

/**
 * The launches that are looked through.
 *
 * @param slowest metres per second, above 0
 * @param fastest metres per second
 * @param lowest elevation in radians
 * @param highest elevation in radians
 */
public record LaunchBox(double slowest, double fastest, double lowest, double highest) {

  /** From a soft push to a hard drive, from downward to a high lob. */
  public static final LaunchBox EVERY_SHOT =
      new LaunchBox(2.5, 28, Math.toRadians(-20), Math.toRadians(70));

  /** Checks the order; the check is written so that NaN fails it. */
  public LaunchBox {
    if (!(slowest > 0 && slowest < fastest && lowest < highest)
        || !(Math.abs(lowest) < Math.PI / 2 && Math.abs(highest) < Math.PI / 2)) {
      throw new IllegalArgumentException(
          ("Speeds (%s to %s m/s) and elevations (%s to %s rad) must rise, speeds from above 0,"
                  + " elevations within ±90°.")
              .formatted(slowest, fastest, lowest, highest));
    }
  }
}
