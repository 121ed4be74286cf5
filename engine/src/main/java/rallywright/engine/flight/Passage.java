package rallywright.engine.flight;

/**
 * A moment of a flight.
 *
 * @param seconds after the launch
 * @param ball where the ball is then, where it goes and how it spins
 */
public record Passage(double seconds, Launch ball) {

  /**
   * The speed.
   *
   * @return metres per second
   */
  public double speed() {
    return ball.velocity().length();
  }
}
