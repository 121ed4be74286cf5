package rallywright.engine.club;

/** The hand that holds the paddle. */
public enum Hand {
  /** Right-handed. */
  RIGHT("right"),
  /** Left-handed. */
  LEFT("left"),
  /** Changes hands. */
  BOTH("both");

  private final String words;

  Hand(String words) {
    this.words = words;
  }

  /**
   * The hand in a coach's words.
   *
   * @return for example "left"
   */
  public String words() {
    return words;
  }
}
