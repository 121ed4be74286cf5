package rallywright.engine.club;

/** What a player should not be asked to do. Only its effect on the plan is ever shown to others. */
public enum Limit {
  /** No overheads, for example because of a shoulder. */
  NO_OVERHEADS("no overheads"),
  /** No lunging or deep bending. */
  NO_LUNGING("no lunging"),
  /** No running back for lobs. */
  NO_RUNNING_BACK("no running back"),
  /** No hard blocks of work. */
  EASY_ONLY("easy work only");

  private final String words;

  Limit(String words) {
    this.words = words;
  }

  /**
   * The limit in a coach's words.
   *
   * @return for example "no overheads"
   */
  public String words() {
    return words;
  }
}
