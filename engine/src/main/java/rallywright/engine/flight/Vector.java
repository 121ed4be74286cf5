package rallywright.engine.flight;

/**
 * Three components in the frame of the package: x toward the receiver, y to the hitter's left, z
 * up.
 *
 * @param x toward the receiver
 * @param y to the hitter's left
 * @param z up
 */
public record Vector(double x, double y, double z) {

  /** No length at all. */
  public static final Vector ZERO = new Vector(0, 0, 0);

  /** Refuses what is not finite. */
  public Vector {
    if (!(Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z))) {
      throw new IllegalArgumentException(
          "The three components (%s, %s, %s) must be finite numbers.".formatted(x, y, z));
    }
  }

  /**
   * The length.
   *
   * @return in the unit of the components
   */
  public double length() {
    return Math.sqrt(x * x + y * y + z * z);
  }

  /**
   * This and another.
   *
   * @param other what is added
   * @return the sum
   */
  public Vector plus(Vector other) {
    return new Vector(x + other.x, y + other.y, z + other.z);
  }

  /**
   * This a number of times.
   *
   * @param factor finite
   * @return the product
   */
  public Vector times(double factor) {
    return new Vector(factor * x, factor * y, factor * z);
  }

  /**
   * The vector product.
   *
   * @param other the second factor
   * @return this × other
   */
  public Vector cross(Vector other) {
    return new Vector(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }
}
