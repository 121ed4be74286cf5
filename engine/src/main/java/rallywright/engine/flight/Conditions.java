package rallywright.engine.flight;

/**
 * The world that a ball flies in.
 *
 * @param ball the ball
 * @param air the air
 * @param wind the wind
 */
public record Conditions(Ball ball, Air air, Wind wind) {

  /** Standard gravity in metres per square second: 9.80665 (CGPM 1901). */
  public static final double GRAVITY = 9.80665;

  /** The outdoor ball in still air at 20 °C, 50 % humidity, at the sea. */
  public static final Conditions CALM =
      new Conditions(Ball.OUTDOOR, Air.of(20, 50, Air.SEA_LEVEL_PA), Wind.NONE);

  /**
   * ½ρAC_D/m.
   *
   * @return per metre
   */
  public double dragPerMetre() {
    return air.density() * ball.crossSection() * ball.aero().drag() / (2 * ball.massKg());
  }

  /**
   * ½ρA·a·r/m.
   *
   * @return dimensionless: lift is this times ω × u
   */
  public double liftPerSpin() {
    return air.density()
        * ball.crossSection()
        * ball.aero().liftSlope()
        * ball.radiusM()
        / (2 * ball.massKg());
  }

  /**
   * The speed at which drag holds the ball's weight.
   *
   * @return metres per second; infinite in a vacuum
   */
  public double terminalSpeed() {
    return Math.sqrt(GRAVITY / dragPerMetre());
  }

  /**
   * The same with left and right exchanged.
   *
   * @return ball and air, and the wind from the other side
   */
  public Conditions mirrored() {
    Vector blows = wind.velocity();
    return new Conditions(
        ball, air, new Wind(new Vector(blows.x(), -blows.y(), blows.z()), wind.profile()));
  }
}
