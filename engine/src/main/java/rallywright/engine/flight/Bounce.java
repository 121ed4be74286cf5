package rallywright.engine.flight;

/**
 * The bounce of a thin shell from a level court: restitution upward, friction along the court until
 * the ball grips.
 *
 * <p>While the ball slides, the court's push along it is μ times the push upward; it cannot push
 * beyond the speed at which the touching point stands still. With J = (1 + e)|v_z| the upward push
 * a unit of mass, u the speed of the touching point and I = ⅔mr² of a thin shell, the push along is
 * min(μJ, ⅖|u|) against u. Rigid-body bounce as in R. Cross, <em>Grip-slip behavior of a bouncing
 * ball</em>, Am. J. Phys. 70:1093 (2002), cited from memory; no published friction of this ball was
 * found.
 *
 * @param restitution upward speed after over downward speed before, from 0 to 1
 * @param friction μ of ball on court, 0 or more
 */
public record Bounce(double restitution, double friction) {

  /**
   * Restitution 0.64, the middle of what the rule book's bounce of 30 to 34 in from 78 in allows
   * (0.59 to 0.69, by the points of the ball that are compared); friction 0.6, an assumption of
   * this project.
   */
  public static final Bounce USUAL = new Bounce(0.64, 0.6);

  /** The share of the touching point's speed that the court takes when a thin shell grips: ⅖. */
  private static final double GRIP_SHARE = 0.4;

  /** The push along the court turns the ball: m r / I = 3/(2r) for a thin shell. */
  private static final double SPIN_PER_PUSH = 1.5;

  /** Checks the ranges; the check is written so that NaN fails it. */
  public Bounce {
    if (!(restitution >= 0 && restitution <= 1 && friction >= 0) || !Double.isFinite(friction)) {
      throw new IllegalArgumentException(
          "Restitution (%s) must be from 0 to 1 and friction (%s) 0 or more. Maybe 0.64 and 0.6."
              .formatted(restitution, friction));
    }
  }

  /**
   * How the ball leaves the court.
   *
   * @param landing where and how it lands, going down
   * @param radiusM the ball's radius in metres
   * @return the launch of the second flight
   * @throws IllegalArgumentException if the ball does not go down
   */
  public Launch after(Launch landing, double radiusM) {
    Vector v = landing.velocity();
    Vector spin = landing.spin();
    if (!(v.z() < 0)) {
      throw new IllegalArgumentException(
          "A ball bounces going down, but its upward speed is %s m/s.".formatted(v.z()));
    }
    double touchX = v.x() - spin.y() * radiusM;
    double touchY = v.y() + spin.x() * radiusM;
    double sliding = Math.hypot(touchX, touchY);
    double push = Math.min(friction * (1 + restitution) * -v.z(), GRIP_SHARE * sliding);
    double share = sliding > 0 ? push / sliding : 0;
    double pushX = -share * touchX;
    double pushY = -share * touchY;
    return new Launch(
        landing.position(),
        new Vector(v.x() + pushX, v.y() + pushY, -restitution * v.z()),
        new Vector(
            spin.x() + SPIN_PER_PUSH * pushY / radiusM,
            spin.y() - SPIN_PER_PUSH * pushX / radiusM,
            spin.z()));
  }

  /**
   * Whether the ball grips: the touching point stands still when the ball leaves.
   *
   * @param landing where and how it lands, going down
   * @param radiusM the ball's radius in metres
   * @return false if it slides to the end
   */
  public boolean grips(Launch landing, double radiusM) {
    double sliding =
        Math.hypot(
            landing.velocity().x() - landing.spin().y() * radiusM,
            landing.velocity().y() + landing.spin().x() * radiusM);
    return friction * (1 + restitution) * -landing.velocity().z() >= GRIP_SHARE * sliding;
  }
}
