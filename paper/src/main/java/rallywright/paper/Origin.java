package rallywright.paper;

/** Where the people and results on a page come from. */
public enum Origin {
  /** The club's own. */
  OWN_CLUB(""),
  /** Invented, for showing the program. */
  DEMO("Demo: an invented club with invented people.");

  private final String sentence;

  Origin(String sentence) {
    this.sentence = sentence;
  }

  /**
   * The sentence that a page must carry.
   *
   * @return the sentence, empty for the club's own data
   */
  public String sentence() {
    return sentence;
  }
}
