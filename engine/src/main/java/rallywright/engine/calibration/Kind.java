package rallywright.engine.calibration;

/** The kinds of numbers that the model answers with a spread. */
public enum Kind {
  /** A skill of a player in a week. */
  SKILL("skills"),
  /** By how much a skill rose from the first to the last week. */
  RISE("rises of a skill"),
  /** The advantage of a role in a drill, and what a direction adds to it. */
  DRILL_EFFECT("drill effects"),
  /** The difficulty of a yardstick. */
  YARDSTICK("yardstick difficulties"),
  /** What a minute of a drill brings, with the prior that the tool uses. */
  GAIN("gains"),
  /** The same with a prior so wide that a season teaches something about it. */
  WIDE_GAIN("gains, wide prior");

  private final String words;

  Kind(String words) {
    this.words = words;
  }

  /**
   * The kind in words.
   *
   * @return a plural in lower case
   */
  public String words() {
    return words;
  }
}
