package rallywright.engine.flight;

import rallywright.engine.quantity.Source;

/**
 * A ball as the flight sees it: a sphere with drag, lift and a bounce.
 *
 * @param massKg mass in kilograms, above 0
 * @param radiusM radius in metres, above 0
 * @param aero how the air acts on it
 * @param bounce how the court acts on it
 * @param source where the numbers come from
 */
public record Ball(double massKg, double radiusM, Aero aero, Bounce bounce, Source source) {

  /**
   * How the air acts on a ball.
   *
   * @param drag drag coefficient C_D, 0 or more
   * @param dragSd how much C_D differs between measurements, one standard deviation
   * @param liftSlope a in C_L = a·S, S = r|ω×u|/|u|², 0 or more
   * @param liftSlopeSd one standard deviation of a
   */
  public record Aero(double drag, double dragSd, double liftSlope, double liftSlopeSd) {

    /** Checks the ranges; the check is written so that NaN fails it. */
    public Aero {
      if (!(drag >= 0 && dragSd >= 0 && liftSlope >= 0 && liftSlopeSd >= 0)
          || !Double.isFinite(drag + dragSd + liftSlope + liftSlopeSd)) {
        throw new IllegalArgumentException(
            "Drag (%s ± %s) and lift (%s ± %s) must be 0 or more. Maybe 0.33 and 0.195."
                .formatted(drag, dragSd, liftSlope, liftSlopeSd));
      }
    }
  }

  private static final Source MEASURED =
      new Source(
          "C_D: C. Lindsey, The Physics of Pickleball Aerodynamics and Trajectories (2025),"
              + " second-hand; lift slope: Steyn et al., arXiv:2501.00163, second-hand, its spread"
              + " an assumption of this project; mass and size: middle of the rule book's limits");

  /**
   * The lift slope of Steyn et al. with a spread of ours: topspin and backspin are not mirror
   * images, and quoters differ in the sizes.
   */
  private static final double LIFT_SLOPE = 0.195;

  private static final double LIFT_SLOPE_SD = 0.08;

  /** The outdoor ball with 40 holes: C_D 0.33 ± 0.083. */
  public static final Ball OUTDOOR =
      new Ball(
          0.0243, 0.0371, new Aero(0.33, 0.083, LIFT_SLOPE, LIFT_SLOPE_SD), Bounce.USUAL, MEASURED);

  /** The indoor ball with 26 holes: C_D 0.45 ± 0.092. */
  public static final Ball INDOOR =
      new Ball(
          0.0235,
          0.03675,
          new Aero(0.45, 0.092, LIFT_SLOPE, LIFT_SLOPE_SD),
          Bounce.USUAL,
          MEASURED);

  /** The lightest mass of the rule book: 0.78 oz, in kilograms. */
  public static final double LIGHTEST_KG = 0.78 * 0.028349523125;

  /** The heaviest mass of the rule book: 0.935 oz, in kilograms. */
  public static final double HEAVIEST_KG = 0.935 * 0.028349523125;

  /** The smallest radius of the rule book: half of 2.87 in, in metres. */
  public static final double SMALLEST_RADIUS_M = 2.87 * 0.0254 / 2;

  /** The largest radius of the rule book: half of 2.97 in, in metres. */
  public static final double LARGEST_RADIUS_M = 2.97 * 0.0254 / 2;

  /** Checks the ranges; the check is written so that NaN fails it. */
  public Ball {
    if (!(massKg > 0 && radiusM > 0) || !Double.isFinite(massKg + radiusM)) {
      throw new IllegalArgumentException(
          "A ball's mass (%s kg) and radius (%s m) must be above 0. Maybe 0.0243 and 0.0371."
              .formatted(massKg, radiusM));
    }
  }

  /**
   * The same ball with another drag and lift.
   *
   * @param other how the air acts on it
   * @return the ball
   */
  public Ball with(Aero other) {
    return new Ball(massKg, radiusM, other, bounce, source);
  }

  /**
   * The area that meets the air.
   *
   * @return square metres
   */
  public double crossSection() {
    return Math.PI * radiusM * radiusM;
  }
}
