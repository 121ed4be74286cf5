package rallywright.engine.court;

/**
 * A lane on a numbered court.
 *
 * @param court the court's number, from 1
 * @param lane the lane on it
 */
public record CourtLane(int court, Lane lane) {

  /** Checks the court's number. */
  public CourtLane {
    if (court < 1) {
      throw new IllegalArgumentException(
          "The court's number ("
              + court
              + ") must be 1 or more. Maybe courts were counted from 0.");
    }
  }

  /**
   * The place in a coach's words.
   *
   * @return for example "court 2, left lane"
   */
  public String words() {
    return "court " + court + ", " + lane.words();
  }
}
