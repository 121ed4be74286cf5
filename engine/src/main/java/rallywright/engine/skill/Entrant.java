package rallywright.engine.skill;

import java.util.OptionalDouble;

/**
 * A player as the model first meets them.
 *
 * @param level the coach's own estimate, 2.5 to 5 and above; empty where there is none
 * @param firstWeek the week for which that estimate was made, from 0; skills wander from there
 */
public record Entrant(OptionalDouble level, int firstWeek) {
  /** The lowest and the highest level that make sense on any scale in use (common practice). */
  private static final double LOWEST = 0;

  private static final double HIGHEST = 10;

  /** Checks the ranges; the check is written so that NaN fails it. */
  public Entrant {
    if (level.isPresent() && !(level.getAsDouble() > LOWEST && level.getAsDouble() <= HIGHEST)) {
      throw new IllegalArgumentException(
          "The level ("
              + level.getAsDouble()
              + ") must lie above 0 and not above 10."
              + " Maybe 3.5, or leave it out if it is not known.");
    }
    if (firstWeek < 0) {
      throw new IllegalArgumentException(
          "The first week (" + firstWeek + ") must be 0 or later. Weeks count from 0.");
    }
  }

  /**
   * A player with a level, from week 0.
   *
   * @param level the coach's estimate
   * @return the entrant
   */
  public static Entrant atLevel(double level) {
    return new Entrant(OptionalDouble.of(level), 0);
  }

  /**
   * A player of whom nothing is known, from week 0.
   *
   * @return the entrant
   */
  public static Entrant unknown() {
    return new Entrant(OptionalDouble.empty(), 0);
  }
}
