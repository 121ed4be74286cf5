package rallywright.engine.drill;

/** The place and task that a drill gives a player. */
public enum Role {
  /** Both players do the same. */
  EVEN("even"),
  /** At the non-volley line. */
  UP("up"),
  /** In the transition zone. */
  MID("mid"),
  /** At the baseline. */
  BACK("back"),
  /** Serves. */
  SERVER("server"),
  /** Receives. */
  RECEIVER("receiver");

  private final String words;

  Role(String words) {
    this.words = words;
  }

  /**
   * The role in a coach's words.
   *
   * @return for example "back"
   */
  public String words() {
    return words;
  }
}
