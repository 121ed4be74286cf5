package rallywright.engine.drill;

/** What a role asks of the body, so that a plan can spare a player who should not do it. */
public enum Demand {
  /** Striking above the head. */
  OVERHEADS("overheads"),
  /** Lunging or deep bending. */
  LUNGING("lunging"),
  /** Turning and running back for a lob. */
  RUNNING_BACK("running back"),
  /** Hard work without a pause. */
  HARD_WORK("hard work");

  private final String words;

  Demand(String words) {
    this.words = words;
  }

  /**
   * The demand in a coach's words.
   *
   * @return for example "overheads"
   */
  public String words() {
    return words;
  }
}
