package rallywright.engine.score;

/** One of the two sides of a game: a player in a game of two, a pair in doubles. */
public enum Side {
  /** The first named side. */
  A,
  /** The second named side. */
  B;

  /**
   * The side across the net.
   *
   * @return B for A, A for B
   */
  public Side opponent() {
    return this == A ? B : A;
  }
}
