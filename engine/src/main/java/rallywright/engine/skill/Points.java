package rallywright.engine.skill;

/**
 * The points of both sides.
 *
 * @param a points of side A, 0 or more
 * @param b points of side B, 0 or more
 */
public record Points(int a, int b) {
  /** Nothing scored yet. */
  public static final Points NONE = new Points(0, 0);

  /** Checks the range. */
  public Points {
    if (a < 0 || b < 0) {
      throw new IllegalArgumentException(
          "The points (" + a + "-" + b + ") must be 0 or more. Maybe a sign slipped in.");
    }
  }
}
