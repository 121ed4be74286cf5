package rallywright.engine.flight;

/**
 * A shot before its speed and angles are chosen.
 *
 * @param contact where the ball is hit: its centre, in metres
 * @param topspin radians per second; below 0 for backspin
 * @param target what it should do
 * @param conditions ball, air and wind
 */
public record Shot(Vector contact, double topspin, Target target, Conditions conditions) {

  /** Checks that the hitter stands on their own side of the net, above the floor. */
  public Shot {
    double radius = conditions.ball().radiusM();
    if (!(contact.x() < 0)) {
      throw new IllegalArgumentException(
          "The ball must be hit before the net: %s m is not below 0. Maybe -6.7, the baseline."
              .formatted(contact.x()));
    }
    if (!(contact.z() > radius)) {
      throw new IllegalArgumentException(
          "The contact height (%s m) must be above the ball's radius (%s m). Maybe 0.6."
              .formatted(contact.z(), radius));
    }
    if (!Double.isFinite(topspin)) {
      throw new IllegalArgumentException("The spin must be a finite number.");
    }
  }

  /**
   * A trial of the shot.
   *
   * @return a fresh one, for one thread
   */
  ShotTrial trial() {
    return new ShotTrial(this);
  }
}
