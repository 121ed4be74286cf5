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

  /** The acceleration that was asked for last, in metres per square second. */
  double ax;

  double ay;
  double az;

  private final Wind wind;
  private final double windX;
  private final double windY;
  private final double windZ;
  private final double drag;
  private final double lift;
  private double turnX;
  private double turnY;
  private double turnZ;

  Motion(Conditions conditions) {
    wind = conditions.wind();
    windX = wind.velocity().x();
    windY = wind.velocity().y();
    windZ = wind.velocity().z();
    drag = conditions.dragPerMetre();
    lift = conditions.liftPerSpin();
  }

  void spin(double x, double y, double z) {
    turnX = lift * x;
    turnY = lift * y;
    turnZ = lift * z;
  }

  /** Whether the wind is the same at every height. */
  boolean isSteady() {
    return wind.profile() == Wind.Profile.CONSTANT;
  }

  /** The share of the wind at a height. */
  double shareAt(double height) {
    return wind.shareAt(height);
  }

  /** The acceleration at a velocity, where a share of the wind blows. */
  void accelerate(double share, double vx, double vy, double vz) {
    double ux = vx - share * windX;
    double uy = vy - share * windY;
    double uz = vz - share * windZ;
    double slowing = drag * Math.sqrt(ux * ux + uy * uy + uz * uz);
    ax = turnY * uz - turnZ * uy - slowing * ux;
    ay = turnZ * ux - turnX * uz - slowing * uy;
    az = turnX * uy - turnY * ux - slowing * uz - Conditions.GRAVITY;
  }

  /** The rate of change of a state. */
  void rate(double[] state, double[] rate) {
    accelerate(wind.shareAt(state[2]), state[3], state[4], state[5]);
    rate[0] = state[3];
    rate[1] = state[4];
    rate[2] = state[5];
    rate[3] = ax;
    rate[4] = ay;
    rate[5] = az;
  }
}
