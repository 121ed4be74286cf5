package rallywright.engine.drill;

/** Skills that tend to rise and fall together. An assumption of this project. */
public enum SkillGroup {
  /** Drop, reset and dink. */
  SOFT_GAME("soft game"),
  /** Attack, counter and pressing volley. */
  HANDS("hands"),
  /** Serve, return, drive, overhead and lob. */
  POWER("power");

  private final String words;

  SkillGroup(String words) {
    this.words = words;
  }

  /**
   * The group in a coach's words.
   *
   * @return for example "soft game"
   */
  public String words() {
    return words;
  }
}
