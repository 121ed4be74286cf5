package rallywright.engine.practice;

import rallywright.engine.quantity.Temperature;

/**
 * How hot the air feels in the shade: the heat index of the United States National Weather Service.
 *
 * <p><b>Card.</b> In: air temperature and relative humidity. Out: degrees that the air feels like.
 * Method: L. P. Rothfusz, The heat index equation, NWS Southern Region Technical Attachment SR
 * 90-23 (1990): a regression on a table by R. G. Steadman (1979), with the two adjustments and the
 * simple formula for mild air that the service's prediction centre states beside it. Readings
 * taken: the simple formula already holds the average with the air temperature and is averaged
 * once; at 40 °F and below the air temperature itself stands, as in the service's own program; the
 * choice between the formulas may leave a small step at 80 °F. Valid: shade and light wind, about
 * 80 to 112 °F; beyond, the regression is carried on. Full sun can add up to 15 °F.
 *
 * @param fahrenheit what the air feels like, in °F
 */
public record HeatIndex(double fahrenheit) {

  /** The edition in words. */
  public static final String EDITION =
      "heat index of the US National Weather Service, SR 90-23 (Rothfusz 1990) with both"
          + " adjustments";

  private static final double MILD_FAHRENHEIT = 40;

  /** Air kept in °C comes back to its °F, so that the limits fall where they were typed. */
  private static final double WHOLE = 1e9;

  private static final double REGRESSION_FROM_FAHRENHEIT = 80;

  /**
   * The heat index.
   *
   * @param air the air temperature
   * @param humidityPercent the relative humidity, 0 to 100 %
   * @return what it feels like in the shade
   * @throws IllegalArgumentException if the humidity lies outside
   */
  public static HeatIndex of(Temperature air, double humidityPercent) {
    if (!(humidityPercent >= 0 && humidityPercent <= 100)) {
      throw new IllegalArgumentException(
          "The humidity (%s %%) must lie from 0 to 100 %%. Maybe 70.".formatted(humidityPercent));
    }
    double t = Math.round(air.fahrenheit() * WHOLE) / WHOLE;
    if (t <= MILD_FAHRENHEIT) {
      return new HeatIndex(t);
    }
    double simple = 0.5 * (t + 61 + (t - 68) * 1.2 + 0.094 * humidityPercent);
    return new HeatIndex(
        simple < REGRESSION_FROM_FAHRENHEIT
            ? simple
            : regression(t, humidityPercent) + adjustment(t, humidityPercent));
  }

  /** The nine terms of SR 90-23; t in °F, r in percent. Without adjustments: the printed chart. */
  static double regression(double t, double r) {
    return -42.379
        + 2.04901523 * t
        + 10.14333127 * r
        - 0.22475541 * t * r
        - 0.00683783 * t * t
        - 0.05481717 * r * r
        + 0.00122874 * t * t * r
        + 0.00085282 * t * r * r
        - 0.00000199 * t * t * r * r;
  }

  private static double adjustment(double t, double r) {
    if (r < 13 && t >= 80 && t <= 112) {
      return -(13 - r) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
    }
    if (r > 85 && t >= 80 && t <= 87) {
      return (r - 85) / 10 * ((87 - t) / 5);
    }
    return 0;
  }

  /**
   * The same in °C.
   *
   * @return degrees Celsius
   */
  public double celsius() {
    return (fahrenheit - 32) / 1.8;
  }

  /**
   * Where it lies in the service's chart.
   *
   * @return the category
   */
  public HeatCategory category() {
    return HeatCategory.of(this);
  }
}
