package rallywright.paper.sheet;

/** The form by which a role is told apart on paper, without colour. */
public enum Mark {
  /** A solid block. */
  SOLID("solid"),
  /** An outlined block. */
  OUTLINED("outlined");

  private final String words;

  Mark(String words) {
    this.words = words;
  }

  /**
   * The form in words, also the name of its style.
   *
   * @return "solid" or "outlined"
   */
  public String words() {
    return words;
  }
}
