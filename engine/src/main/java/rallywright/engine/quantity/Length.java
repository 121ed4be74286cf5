package rallywright.engine.quantity;

import java.util.Locale;

/**
 * A length, or a signed distance along an axis. Kept in metres.
 *
 * @param metres the length in metres, finite
 */
public record Length(double metres) implements Comparable<Length> {

  /** No length at all. */
  public static final Length ZERO = new Length(0);

  /** One foot in metres, exactly. Source: international foot, 1959. */
  public static final double METRES_PER_FOOT = 0.3048;

  private static final double INCHES_PER_FOOT = 12;

  /** Refuses what is not a finite number. */
  public Length {
    if (!Double.isFinite(metres)) {
      throw new IllegalArgumentException(
          "The length (" + metres + " m) must be a finite number. Maybe a division by 0.");
    }
  }

  /**
   * A length in metres.
   *
   * @param metres finite
   * @return the length
   */
  public static Length metres(double metres) {
    return new Length(metres);
  }

  /**
   * A length in feet.
   *
   * @param feet finite
   * @return the length
   */
  public static Length feet(double feet) {
    return new Length(feet * METRES_PER_FOOT);
  }

  /**
   * A length in inches.
   *
   * @param inches finite
   * @return the length
   */
  public static Length inches(double inches) {
    return feet(inches / INCHES_PER_FOOT);
  }

  /**
   * The same length in feet.
   *
   * @return feet
   */
  public double feet() {
    return metres / METRES_PER_FOOT;
  }

  /**
   * This length and another.
   *
   * @param other what is added
   * @return the sum
   */
  public Length plus(Length other) {
    return new Length(metres + other.metres);
  }

  /**
   * This length less another.
   *
   * @param other what is taken off
   * @return the difference, which may be below 0
   */
  public Length minus(Length other) {
    return new Length(metres - other.metres);
  }

  /**
   * This length a number of times.
   *
   * @param factor dimensionless, finite
   * @return the product
   */
  public Length times(double factor) {
    return new Length(metres * factor);
  }

  /**
   * The same distance the other way.
   *
   * @return minus this length
   */
  public Length negated() {
    return new Length(0 - metres);
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(metres, other.metres);
  }

  /**
   * The length for a message.
   *
   * @return feet with up to two decimals, for example "7.5 ft"
   */
  public String inFeet() {
    String text = String.format(Locale.ROOT, "%.2f", feet());
    return text.replaceAll("\\.?0+$", "") + " ft";
  }
}
