package rallywright.engine.score;

/** Which server of a side's turn is serving. */
public enum ServerNumber {
  /** The first, or only, server of the turn. */
  FIRST(1),
  /** The second server: the next lost rally passes the serve across the net. */
  SECOND(2);

  private final int called;

  ServerNumber(int called) {
    this.called = called;
  }

  /**
   * The number as it is called.
   *
   * @return 1 or 2
   */
  public int called() {
    return called;
  }
}
