package rallywright.engine.quantity;

/**
 * A speed without a direction. Kept in metres per second.
 *
 * @param metresPerSecond 0 or more, finite
 */
public record Speed(double metresPerSecond) {

  /** One mile per hour in m/s, exactly. Source: international yard and pound agreement, 1959. */
  public static final double METRES_PER_SECOND_IN_MPH = 0.44704;

  /** Checks the range; the check is written so that NaN fails it. */
  public Speed {
    if (!(metresPerSecond >= 0 && metresPerSecond < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The speed (%s m/s) must be 0 or more. Maybe leave the sign out."
              .formatted(metresPerSecond));
    }
  }

  /**
   * A speed in metres per second.
   *
   * @param metresPerSecond 0 or more
   * @return the speed
   */
  public static Speed metresPerSecond(double metresPerSecond) {
    return new Speed(metresPerSecond);
  }

  /**
   * A speed in miles per hour.
   *
   * @param mph 0 or more
   * @return the speed
   */
  public static Speed mph(double mph) {
    return new Speed(mph * METRES_PER_SECOND_IN_MPH);
  }

  /**
   * A speed in kilometres per hour.
   *
   * @param kmh 0 or more
   * @return the speed
   */
  public static Speed kmh(double kmh) {
    return new Speed(kmh / 3.6);
  }

  /**
   * The same speed in miles per hour.
   *
   * @return 0 or more
   */
  public double mph() {
    return metresPerSecond / METRES_PER_SECOND_IN_MPH;
  }
}
