package rallywright.engine.score;

/**
 * The points of both sides.
 *
 * @param a points of side A, 0 or more
 * @param b points of side B, 0 or more
 */
public record Score(int a, int b) {

  /** Nobody has a point. */
  public static final Score LOVE_ALL = new Score(0, 0);

  /** Checks that no side has fewer than no points. */
  public Score {
    if (a < 0 || b < 0) {
      throw new IllegalArgumentException(
          "The score (%d-%d) must have no number below 0. Maybe a minus sign slipped in."
              .formatted(a, b));
    }
  }

  /**
   * A score, side A first.
   *
   * @param a points of side A, 0 or more
   * @param b points of side B, 0 or more
   * @return the score
   * @throws IllegalArgumentException if a number lies below 0
   */
  public static Score of(int a, int b) {
    return new Score(a, b);
  }

  /**
   * The points of one side.
   *
   * @param side the side asked for
   * @return its points
   */
  public int of(Side side) {
    return side == Side.A ? a : b;
  }

  /**
   * The score after a point.
   *
   * @param side who scores
   * @return the score with one point more for that side
   */
  public Score pointTo(Side side) {
    return side == Side.A ? new Score(a + 1, b) : new Score(a, b + 1);
  }

  /**
   * How far a side is ahead.
   *
   * @param side the side asked for
   * @return its points less the other side's, below 0 when it is behind
   */
  public int lead(Side side) {
    return of(side) - of(side.opponent());
  }

  /**
   * The sides exchanged.
   *
   * @return the score with B's points first
   */
  public Score swapped() {
    return new Score(b, a);
  }

  /**
   * All points together.
   *
   * @return the sum of both sides' points
   */
  public int total() {
    return a + b;
  }

  /** The score as people write it, side A first: {@code 5-3}. */
  @Override
  public String toString() {
    return a + "-" + b;
  }
}
