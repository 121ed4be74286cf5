package rallywright.engine.quantity;

/**
 * An air temperature. Kept in degrees Celsius.
 *
 * @param celsius from −40 to 60 °C, as weather can bring it
 */
public record Temperature(double celsius) {

  /** The coldest air that is taken, in °C; the two scales meet there. */
  public static final double COLDEST_CELSIUS = -40;

  /** The hottest air that is taken, in °C. */
  public static final double HOTTEST_CELSIUS = 60;

  /** Checks the range; the check is written so that NaN fails it. */
  public Temperature {
    if (!(celsius >= COLDEST_CELSIUS && celsius <= HOTTEST_CELSIUS)) {
      throw new IllegalArgumentException(
          "The temperature (%s °C) must lie from −40 to 60 °C. Maybe it was meant in °F."
              .formatted(celsius));
    }
  }

  /**
   * A temperature in degrees Celsius.
   *
   * @param celsius from −40 to 60
   * @return the temperature
   */
  public static Temperature celsius(double celsius) {
    return new Temperature(celsius);
  }

  /**
   * A temperature in degrees Fahrenheit.
   *
   * @param fahrenheit from −40 to 140
   * @return the temperature
   * @throws IllegalArgumentException if it lies outside
   */
  public static Temperature fahrenheit(double fahrenheit) {
    if (!(fahrenheit >= -40 && fahrenheit <= 140)) {
      throw new IllegalArgumentException(
          "The temperature (%s °F) must lie from −40 to 140 °F. Maybe a digit too many."
              .formatted(fahrenheit));
    }
    return new Temperature((fahrenheit - 32) / 1.8);
  }

  /**
   * The same temperature in degrees Fahrenheit.
   *
   * @return from −40 to 140
   */
  public double fahrenheit() {
    return celsius * 1.8 + 32;
  }
}
