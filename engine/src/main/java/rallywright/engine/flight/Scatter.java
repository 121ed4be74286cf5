package rallywright.engine.flight;

/**
 * How much a player's launches scatter around the aim: independent normal spreads, one standard
 * deviation each.
 *
 * @param speed share of the speed, for example 0.06 for 6 in 100
 * @param elevation radians
 * @param bearing radians
 */
public record Scatter(double speed, double elevation, double bearing) {

  /** Checks the ranges; the check is written so that NaN fails it. */
  public Scatter {
    if (!(speed > 0 && elevation > 0 && bearing > 0)
        || !(speed < 0.5 && elevation < 0.5 && bearing < 0.5)) {
      throw new IllegalArgumentException(
          ("The scatter in speed (%s), elevation (%s rad) and bearing (%s rad) must be above 0 and"
                  + " below 0.5. Maybe 0.06, 0.05 and 0.05.")
              .formatted(speed, elevation, bearing));
    }
  }

  /**
   * The scatter of a player of a level: 8 in 100 of the speed, 3.5° up and down and 3.2° sideways
   * at level 3.0, a fifth less with every half level. Assumption of this project; yardstick
   * landings of the player replace it.
   *
   * @param level the coach's estimate, 1 to 7
   * @return the scatter
   */
  public static Scatter ofLevel(double level) {
    double share = Math.pow(0.8, (level - 3.0) / 0.5);
    return new Scatter(0.08 * share, Math.toRadians(3.5) * share, Math.toRadians(3.2) * share);
  }

  /**
   * The same, larger or smaller in everything.
   *
   * @param factor above 0
   * @return the scatter
   */
  public Scatter times(double factor) {
    return new Scatter(factor * speed, factor * elevation, factor * bearing);
  }
}
