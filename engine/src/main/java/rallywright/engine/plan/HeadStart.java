package rallywright.engine.plan;

/**
 * Points given before the first rally; at most one side is given any.
 *
 * @param a points given to side A, 0 or more
 * @param b points given to side B, 0 or more
 */
public record HeadStart(int a, int b) {

  /** No points are given. */
  public static final HeadStart NONE = new HeadStart(0, 0);

  /** Checks the range. */
  public HeadStart {
    if (a < 0 || b < 0 || (a > 0 && b > 0)) {
      throw new IllegalArgumentException(
          "The head start ("
              + a
              + "-"
              + b
              + ") must be 0 for one side and 0 or more for the other."
              + " Maybe the points of one side were meant.");
    }
  }
}
