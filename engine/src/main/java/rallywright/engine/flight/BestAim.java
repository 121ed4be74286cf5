package rallywright.engine.flight;

/**
 * The aim with the largest chance of success for a player who scatters.
 *
 * @param aim speed and angles
 * @param chance how often the shot succeeds with it, from 0 to 1
 * @param scatter the player's scatter
 * @param clearance air under the ball over the net when it goes as aimed, in metres
 * @param landing where it lands when it goes as aimed
 */
public record BestAim(
    LaunchAim aim, double chance, Scatter scatter, double clearance, Landing landing) {

  /**
   * A place on the floor.
   *
   * @param x metres beyond the net
   * @param y metres to the hitter's left
   */
  public record Landing(double x, double y) {}
}
