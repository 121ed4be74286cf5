package rallywright.engine.drill;

/** Where a drill stands in a session: from the line back to the baseline, then all together. */
public enum Progression {
  /** Before any ball that counts. */
  WARM_UP("warm-up"),
  /** Both at the non-volley line. */
  LINE("at the line"),
  /** One on the way to the line. */
  TRANSITION("transition"),
  /** One or both at the baseline. */
  BASELINE("baseline"),
  /** Serve, return and everything after. */
  FULL_POINT("full point");

  private final String words;

  Progression(String words) {
    this.words = words;
  }

  /**
   * The place in a coach's words.
   *
   * @return for example "at the line"
   */
  public String words() {
    return words;
  }
}
