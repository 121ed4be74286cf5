package rallywright.engine.drill;

/** The sorts of drill. */
public enum DrillKind {
  /** Getting the body warm, without a ball. Comes first. */
  GENERAL_WARM_UP("general warm-up"),
  /** Getting the hands warm, with paddle and ball. */
  PADDLE_WARM_UP("paddle warm-up"),
  /** Getting the eyes and the volleys warm. */
  VOLLEY_WARM_UP("volley warm-up"),
  /** Both work together for a time; nothing is scored. */
  COOPERATIVE("together, not scored"),
  /** A scored game that starts with a feed. */
  SCORED_GAME("scored drill game"),
  /** A scored game with serve and return. */
  FULL_GAME("full game");

  private final String words;

  DrillKind(String words) {
    this.words = words;
  }

  /**
   * The sort in a coach's words.
   *
   * @return for example "scored drill game"
   */
  public String words() {
    return words;
  }

  /**
   * Whether it is a warm-up of any sort.
   *
   * @return true for the three warm-ups
   */
  public boolean isWarmUp() {
    return this == GENERAL_WARM_UP || this == PADDLE_WARM_UP || this == VOLLEY_WARM_UP;
  }

  /**
   * Whether points are counted.
   *
   * @return true for both sorts of game
   */
  public boolean isScored() {
    return this == SCORED_GAME || this == FULL_GAME;
  }
}
