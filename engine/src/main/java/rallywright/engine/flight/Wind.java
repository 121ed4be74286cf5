package rallywright.engine.flight;

/**
 * The wind over the court: the same at every height, or less near the floor.
 *
 * <p>The profile by height is (z/10 m)^(1/7), the usual rule of thumb for open ground (cited from
 * memory); that a court between fences has it is an assumption of this project.
 *
 * @param velocity where the air goes: constant, or at {@link #REFERENCE_HEIGHT_M}
 * @param profile how it changes with height
 */
public record Wind(Vector velocity, Profile profile) {

  /** How the wind changes with height. */
  public enum Profile {
    /** The same at every height. */
    CONSTANT,
    /** A seventh-root profile: a forecast's wind at 10 m is about 0.7 of it at net height. */
    BY_HEIGHT
  }

  /** No wind. */
  public static final Wind NONE = new Wind(Vector.ZERO, Profile.CONSTANT);

  /** The height at which weather services give the wind: 10 m. */
  public static final double REFERENCE_HEIGHT_M = 10;

  /** The seventh-root rule. */
  static final double EXPONENT = 1.0 / 7;

  /**
   * A constant wind.
   *
   * @param toward metres per second toward the receiver; below 0 for a headwind
   * @param left metres per second to the hitter's left
   * @return the wind
   */
  public static Wind constant(double toward, double left) {
    return new Wind(new Vector(toward, left, 0), Profile.CONSTANT);
  }

  /**
   * The share of the given wind at a height.
   *
   * @param height metres above the floor
   * @return 1 for a constant wind; from 0 near the floor
   */
  public double shareAt(double height) {
    return profile == Profile.CONSTANT
        ? 1
        : Math.pow(Math.max(0, height) / REFERENCE_HEIGHT_M, EXPONENT);
  }
}
