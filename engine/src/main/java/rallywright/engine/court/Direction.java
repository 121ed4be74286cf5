package rallywright.engine.court;

/**
 * The line along which two players drill. The even side is a player's right side, facing the net;
 * the odd side the left.
 */
public enum Direction {
  /** Down the line: one player's even side to the other's odd side. */
  STRAIGHT("straight"),
  /** Diagonal, even side to even side. */
  CROSS_EVEN("cross-court, even side"),
  /** Diagonal, odd side to odd side. */
  CROSS_ODD("cross-court, odd side");

  private final String words;

  Direction(String words) {
    this.words = words;
  }

  /**
   * The direction in a coach's words.
   *
   * @return for example "cross-court, even side"
   */
  public String words() {
    return words;
  }

  /**
   * Whether the ball crosses the court.
   *
   * @return true for both diagonals
   */
  public boolean isCross() {
    return this != STRAIGHT;
  }
}
