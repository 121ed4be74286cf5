package rallywright.engine.flight;

/**
 * Speed and angles of a ball as it leaves the paddle.
 *
 * @param speed metres per second, above 0
 * @param elevation radians above the level, between straight down and straight up
 * @param bearing radians to the hitter's left of straight toward the net
 */
public record LaunchAim(double speed, double elevation, double bearing) {

  /** Checks the ranges; the check is written so that NaN fails it. */
  public LaunchAim {
    if (!(speed > 0 && Math.abs(elevation) < Math.PI / 2 && Math.abs(bearing) < Math.PI)
        || !Double.isFinite(speed)) {
      throw new IllegalArgumentException(
          ("A launch needs a speed above 0 (%s m/s), an elevation within ±90° (%s rad) and a"
                  + " bearing within ±180° (%s rad).")
              .formatted(speed, elevation, bearing));
    }
  }

  /**
   * A launch with angles in degrees.
   *
   * @param speed metres per second, above 0
   * @param elevationDegrees above the level
   * @param bearingDegrees to the hitter's left
   * @return the launch
   */
  public static LaunchAim degrees(double speed, double elevationDegrees, double bearingDegrees) {
    return new LaunchAim(speed, Math.toRadians(elevationDegrees), Math.toRadians(bearingDegrees));
  }

  /**
   * The same as a velocity.
   *
   * @return metres per second
   */
  public Vector velocity() {
    double level = speed * Math.cos(elevation);
    return new Vector(
        level * Math.cos(bearing), level * Math.sin(bearing), speed * Math.sin(elevation));
  }
}
