package rallywright.engine.practice;

/**
 * The categories of the heat index chart with the limits 80, 90, 105 and 130 °F.
 *
 * <p>The limits are those of the chart of the US National Weather Service; another set in use (80,
 * 90, 103, 125 °F) disagrees from 103 to 105 and from 125 to 130 °F. A value on a limit belongs to
 * the hotter category. The advice is the usual caution in this project's words, neither a rule nor
 * medical advice.
 */
public enum HeatCategory {
  /** Below 80 °F. */
  BELOW_CAUTION(
      "below caution",
      Double.NEGATIVE_INFINITY,
      "The usual care: water within reach, a rest between blocks."),
  /** 80 to below 90 °F. */
  CAUTION(
      "caution", 80, "Drink at every change-over and rest in the shade; ask how everybody feels."),
  /** 90 to below 105 °F. */
  EXTREME_CAUTION(
      "extreme caution",
      90,
      "Easier drills, a rest in the shade after each block, water at every change-over; an earlier"
          + " or a later hour is better."),
  /** 105 to below 130 °F. */
  DANGER(
      "danger",
      105,
      "Better not to play now: move to a cooler hour or a hall, or keep to a short, easy session in"
          + " the shade."),
  /** 130 °F and more. */
  EXTREME_DANGER("extreme danger", 130, "Do not play in this heat.");

  /** The chart in words. */
  public static final String EDITION =
      "chart of the US National Weather Service with the limits 80, 90, 105 and 130 °F";

  /** What goes with every category. */
  public static final String ALWAYS =
      "Values are for the shade; full sun can add up to 15 °F (8 °C). Whoever feels dizzy, sick or"
          + " confused stops, goes into the shade and gets medical help. The rules of the place and"
          + " of licensed practice come first.";

  private final String words;
  private final double fromFahrenheit;
  private final String advice;

  HeatCategory(String words, double fromFahrenheit, String advice) {
    this.words = words;
    this.fromFahrenheit = fromFahrenheit;
    this.advice = advice;
  }

  static HeatCategory of(HeatIndex index) {
    HeatCategory found = BELOW_CAUTION;
    for (HeatCategory each : values()) {
      if (index.fahrenheit() >= each.fromFahrenheit) {
        found = each;
      }
    }
    return found;
  }

  /**
   * What the chart calls it.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }

  /**
   * Where it begins.
   *
   * @return in °F; minus infinity for the first
   */
  public double fromFahrenheit() {
    return fromFahrenheit;
  }

  /**
   * The usual caution.
   *
   * @return one sentence or two
   */
  public String advice() {
    return advice;
  }
}
