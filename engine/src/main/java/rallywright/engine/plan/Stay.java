package rallywright.engine.plan;

/**
 * From when to when somebody is at a session, in minutes from its start.
 *
 * @param fromMinute the minute of arrival, 0 for the start
 * @param untilMinute the minute of leaving, after the arrival; {@link #TO_THE_END} for the end
 */
public record Stay(int fromMinute, int untilMinute) {

  /** Stands for the end of the session, however long that is. */
  public static final int TO_THE_END = SessionPlan.LONGEST_MINUTES;

  /** From the start to the end. */
  public static final Stay THROUGHOUT = new Stay(0, TO_THE_END);

  /**
   * So long somebody who comes late warms up alone before the first game, in minutes. Assumption of
   * this project.
   */
  public static final int OWN_WARM_UP_MINUTES = 5;

  /** Who is there for less is not planned for, in minutes. Assumption of this project. */
  public static final int SHORTEST_MINUTES = 15;

  /** Checks the range. */
  public Stay {
    if (!(fromMinute >= 0 && fromMinute < untilMinute && untilMinute <= TO_THE_END)) {
      throw new IllegalArgumentException(
          "From minute %d until minute %d: leaving must come after arriving, both from 0 to %d."
                  .formatted(fromMinute, untilMinute, TO_THE_END)
              + " Maybe swap the two times.");
    }
  }

  /**
   * Comes late and stays to the end.
   *
   * @param minute the minute of arrival, 0 to 479
   * @return the stay
   */
  public static Stay from(int minute) {
    return new Stay(minute, TO_THE_END);
  }

  /**
   * Is there from the start and leaves early.
   *
   * @param minute the minute of leaving, 1 to 480
   * @return the stay
   */
  public static Stay until(int minute) {
    return new Stay(0, minute);
  }

  boolean comesLate() {
    return fromMinute > 0;
  }

  boolean leavesBefore(int minute) {
    return untilMinute < minute;
  }

  /**
   * The stay in a coach's words.
   *
   * @return for example "from minute 20 on" or "until minute 45"
   */
  public String words() {
    if (untilMinute == TO_THE_END) {
      return comesLate() ? "from minute %d on".formatted(fromMinute) : "throughout";
    }
    return comesLate()
        ? "from minute %d to %d".formatted(fromMinute, untilMinute)
        : "until minute %d".formatted(untilMinute);
  }
}
