package rallywright.engine.drill;

/** How hard a drill is on the body. The grading is an assumption of this project. */
public enum Intensity {
  /** Small steps, breath stays calm. */
  EASY("easy"),
  /** Steady footwork, talking is still easy. */
  STEADY("steady"),
  /** Sprints, lunges or fast hands without a pause. */
  HARD("hard");

  private final String words;

  Intensity(String words) {
    this.words = words;
  }

  /**
   * The grade in a coach's words.
   *
   * @return for example "steady"
   */
  public String words() {
    return words;
  }
}
