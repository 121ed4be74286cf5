package rallywright.engine.score;

/**
 * When a ball played round the post counts in a drill: named readings.
 *
 * <p>Source of what is legal: a ball outside the post need not cross the net and may pass at any
 * height; a ball between net and post is a fault (rules 11.L and 11.L.3, edition not named, read
 * second-hand).
 */
public enum RoundThePost {
  /**
   * The ball counts, and wins the rally, if it is legal on the full court, although it usually
   * lands outside the lane of a cross-court drill. Reading of this project; example: outside the
   * post at knee height, bouncing in the far corner of the other half: counts.
   */
  LEGAL_ON_FULL_COURT("legal on the full court: outside the post, at any height"),
  /** The drill has no such ending: the ball must land inside the lane, over the net. */
  NOT_ALLOWED("not part of this drill: the ball must cross the net and land in the lane");

  private final String label;

  RoundThePost(String label) {
    this.label = label;
  }

  /**
   * The reading for people.
   *
   * @return a few words in lower case
   */
  public String label() {
    return label;
  }

  /**
   * What a ball is worth under this reading.
   *
   * @param way where it passed the line of the net
   * @param landing where it bounced
   * @return whether it wins the rally
   */
  public Verdict judge(Way way, Landing landing) {
    return switch (this) {
      case NOT_ALLOWED -> Verdict.FAULT;
      case LEGAL_ON_FULL_COURT ->
          way == Way.OUTSIDE_THE_POST && landing == Landing.IN_THE_COURT
              ? Verdict.WINS_THE_RALLY
              : Verdict.FAULT;
    };
  }

  /** Where the ball passed the line of the net. */
  public enum Way {
    /** Outside the post, at any height. */
    OUTSIDE_THE_POST,
    /** Through the gap between the net and the post. */
    BETWEEN_NET_AND_POST
  }

  /** Where the ball bounced, on the full court. */
  public enum Landing {
    /** Inside the opponents' half of the full court, lines included. */
    IN_THE_COURT,
    /** Outside it. */
    OUT
  }

  /** What follows. */
  public enum Verdict {
    /** The player who struck the ball wins the rally. */
    WINS_THE_RALLY,
    /** The player who struck the ball loses the rally. */
    FAULT
  }
}
