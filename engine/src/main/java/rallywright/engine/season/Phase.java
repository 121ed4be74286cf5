package rallywright.engine.season;

/** The parts of a season. The order is common practice, no source. */
public enum Phase {
  /** Everything once a week, the weakest skills in front. */
  BROAD("everything once, the weakest in front"),
  /** Only what those present need most. */
  DEEP("few things, and those thoroughly"),
  /** Games with serve and return; what was learned is put together. */
  TOGETHER("games: what was learned is put together");

  private final String words;

  Phase(String words) {
    this.words = words;
  }

  /**
   * The part in a coach's words.
   *
   * @return for example "few things, and those thoroughly"
   */
  public String words() {
    return words;
  }

  /** The phase of a week: about two fifths broad, two fifths deep, the last fifth together. */
  static Phase of(int week, int weeks) {
    double gone = (week - 0.5) / weeks;
    return gone < 0.4 ? BROAD : gone < 0.8 ? DEEP : TOGETHER;
  }
}
