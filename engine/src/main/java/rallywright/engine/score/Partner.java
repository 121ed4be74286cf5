package rallywright.engine.score;

/**
 * One of the players of a side, named by where this player stands while the side's score is even. A
 * player alone on a side is {@link #RIGHT_AT_EVEN}.
 */
public enum Partner {
  /** Starts the game on the right, and is the side's first server of the game. */
  RIGHT_AT_EVEN,
  /** Starts the game on the left. */
  LEFT_AT_EVEN;

  /**
   * The other player of the pair.
   *
   * @return the partner
   */
  public Partner other() {
    return this == RIGHT_AT_EVEN ? LEFT_AT_EVEN : RIGHT_AT_EVEN;
  }

  /**
   * Who stands on the right by the score alone.
   *
   * @param points the side's points
   * @return {@link #RIGHT_AT_EVEN} for an even number, else the partner
   */
  public static Partner onRightAt(int points) {
    return points % 2 == 0 ? RIGHT_AT_EVEN : LEFT_AT_EVEN;
  }
}
