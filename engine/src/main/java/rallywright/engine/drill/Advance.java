package rallywright.engine.drill;

/** Whether a role may leave its place toward the net. */
public enum Advance {
  /** Keeps the starting depth. */
  STAYS("stays"),
  /** May come forward when the ball allows it. */
  MAY_COME_FORWARD("may come forward"),
  /** May go anywhere in the lane. */
  FREE("may go anywhere in the lane");

  private final String words;

  Advance(String words) {
    this.words = words;
  }

  /**
   * The permission in a coach's words.
   *
   * @return for example "may come forward"
   */
  public String words() {
    return words;
  }
}
