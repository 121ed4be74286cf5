package rallywright.engine.court;

/** The right or left half of one's own end, facing the net. */
public enum CourtHalf {
  /** The right-hand half. */
  EVEN("even side"),
  /** The left-hand half. */
  ODD("odd side");

  private final String words;

  CourtHalf(String words) {
    this.words = words;
  }

  /**
   * The half in the trade's words.
   *
   * @return "even side" or "odd side"
   */
  public String words() {
    return words;
  }
}
