package rallywright.engine.flight;

/**
 * A ball at one moment: where it is, where it goes, how it spins.
 *
 * @param position of its centre, in metres
 * @param velocity in metres per second
 * @param spin angular velocity in radians per second; topspin of a ball toward the receiver is
 *     above 0 in y
 */
public record Launch(Vector position, Vector velocity, Vector spin) {

  /**
   * A launch by speed and angles.
   *
   * @param position of the ball's centre, in metres
   * @param aim speed and angles
   * @param topspin radians per second about the level axis across the flight; below 0 for backspin
   * @return the launch
   */
  public static Launch of(Vector position, LaunchAim aim, double topspin) {
    Vector spin =
        new Vector(-topspin * Math.sin(aim.bearing()), topspin * Math.cos(aim.bearing()), 0);
    return new Launch(position, aim.velocity(), spin);
  }
}
