package rallywright.engine.flight;

/**
 * The equation of motion: v̇ = g - ½ρAC_D|u|u/m + ½ρA·a·r·(ω×u)/m with u = v - wind and ω constant
 * in flight (no published spin decay of this ball was found). C_L = a·S with S = r|ω×u|/|u|², so
 * only spin across the flight lifts.
 *
 * <p>For the maintainer: a state is x, y, z, v_x, v_y, v_z in an array; nothing is allocated here.
 */
final class Motion {

  /** Numbers in a state. */
  static final int SIZE = 6;

  private final Wind wind;
  private final double windX;
  private final double windY;
  private final double windZ;
  private final double drag;
  private final double lift;
  private double spinX;
  private double spinY;
  private double spinZ;

  Motion(Conditions conditions) {
    wind = conditions.wind();
    windX = wind.velocity().x();
    windY = wind.velocity().y();
    windZ = wind.velocity().z();
    drag = conditions.dragPerMetre();
    lift = conditions.liftPerSpin();
  }

  void spin(double x, double y, double z) {
    spinX = x;
    spinY = y;
    spinZ = z;
  }

  /** The rate of change of a state. */
  void rate(double[] state, double[] rate) {
    double share = wind.shareAt(state[2]);
    double ux = state[3] - share * windX;
    double uy = state[4] - share * windY;
    double uz = state[5] - share * windZ;
    double slowing = drag * Math.sqrt(ux * ux + uy * uy + uz * uz);
    rate[0] = state[3];
    rate[1] = state[4];
    rate[2] = state[5];
    rate[3] = lift * (spinY * uz - spinZ * uy) - slowing * ux;
    rate[4] = lift * (spinZ * ux - spinX * uz) - slowing * uy;
    rate[5] = lift * (spinX * uy - spinY * ux) - slowing * uz - Conditions.GRAVITY;
  }
}
