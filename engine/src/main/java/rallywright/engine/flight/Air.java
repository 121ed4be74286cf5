package rallywright.engine.flight;

/**
 * The air's density.
 *
 * <p>ρ = p_d/(R_d T) + p_v/(R_v T): dry air and water vapour as ideal gases. Saturation e_s =
 * 610.78·10^(7.5t/(237.3+t)) Pa (Tetens 1930, as printed by Murray 1967; from memory). Pressure by
 * altitude: the International Standard Atmosphere, 101,325 Pa at sea level, 0.0065 K/m.
 *
 * @param density kilograms per cubic metre, 0 (vacuum) or more
 */
public record Air(double density) {

  /** No air at all, for comparison. */
  public static final Air NONE = new Air(0);

  /** Standard pressure at sea level in pascals. */
  public static final double SEA_LEVEL_PA = 101_325;

  private static final double DRY_J_PER_KG_K = 287.05;
  private static final double VAPOUR_J_PER_KG_K = 461.495;
  private static final double FREEZING_K = 273.15;
  private static final double STANDARD_K = 288.15;
  private static final double LAPSE_K_PER_M = 0.0065;
  private static final double ISA_EXPONENT = 5.25588;

  /** Checks the range; the check is written so that NaN fails it. */
  public Air {
    if (!(density >= 0 && density < 10)) {
      throw new IllegalArgumentException(
          "The air's density (%s kg/m³) must be from 0 to 10. Maybe 1.2.".formatted(density));
    }
  }

  /**
   * The air of a day.
   *
   * @param celsius temperature, from -40 to 60
   * @param humidityPercent relative humidity, from 0 to 100
   * @param pressurePa pressure at the place, in pascals, from 30,000 to 120,000
   * @return the air
   * @throws IllegalArgumentException if a value lies outside
   */
  public static Air of(double celsius, double humidityPercent, double pressurePa) {
    if (!(celsius >= -40 && celsius <= 60)) {
      throw new IllegalArgumentException(
          "The temperature (%s °C) must be from -40 to 60 °C.".formatted(celsius));
    }
    if (!(humidityPercent >= 0 && humidityPercent <= 100)) {
      throw new IllegalArgumentException(
          "The humidity (%s %%) must be from 0 to 100 %%.".formatted(humidityPercent));
    }
    if (!(pressurePa >= 30_000 && pressurePa <= 120_000)) {
      throw new IllegalArgumentException(
          "The pressure (%s Pa) must be from 30,000 to 120,000 Pa. Maybe 101325."
              .formatted(pressurePa));
    }
    double kelvin = celsius + FREEZING_K;
    double vapour =
        humidityPercent / 100 * 610.78 * Math.pow(10, 7.5 * celsius / (237.3 + celsius));
    double dry = pressurePa - vapour;
    return new Air(dry / (DRY_J_PER_KG_K * kelvin) + vapour / (VAPOUR_J_PER_KG_K * kelvin));
  }

  /**
   * The standard pressure at an altitude.
   *
   * @param metres above the sea, from -500 to 8,000
   * @return pascals
   * @throws IllegalArgumentException if the altitude lies outside
   */
  public static double pressureAt(double metres) {
    if (!(metres >= -500 && metres <= 8_000)) {
      throw new IllegalArgumentException(
          "The altitude (%s m) must be from -500 to 8,000 m.".formatted(metres));
    }
    return SEA_LEVEL_PA * Math.pow(1 - LAPSE_K_PER_M * metres / STANDARD_K, ISA_EXPONENT);
  }

  /**
   * The standard temperature at an altitude.
   *
   * @param metres above the sea
   * @return degrees Celsius, 15 at the sea
   */
  public static double standardCelsiusAt(double metres) {
    return STANDARD_K - FREEZING_K - LAPSE_K_PER_M * metres;
  }
}
