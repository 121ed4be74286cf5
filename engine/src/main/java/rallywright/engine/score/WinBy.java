package rallywright.engine.score;

/** By how many points a game must be won. */
public enum WinBy {
  /** The first to the target wins. */
  ONE(1),
  /** The target and a lead of two. */
  TWO(2);

  private final int points;

  WinBy(int points) {
    this.points = points;
  }

  /**
   * The lead needed.
   *
   * @return 1 or 2 points
   */
  public int points() {
    return points;
  }
}
