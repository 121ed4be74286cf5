package rallywright.engine.plan;

/**
 * What the coach asks for, as it was said; the planner checks it and answers a wish that cannot be
 * met in a sentence.
 *
 * @param minutes the booked time in minutes
 * @param courts how many courts are booked
 * @param coverage what the session must touch
 * @param confidence the chance with which the session must fit the booked time, for example 0.9
 * @param maxHardMinutes how many hard minutes may follow one another without an easier block
 * @param warmUps whether the session begins with its warm-ups
 * @param seed fixes every random choice of the search: same seed, same plan
 * @param requests what the coach asks for beyond the usual
 */
public record SessionWish(
    int minutes,
    int courts,
    Coverage coverage,
    double confidence,
    double maxHardMinutes,
    WarmUps warmUps,
    long seed,
    Requests requests) {

  /** A session fits nine times in ten. */
  public static final double USUAL_CONFIDENCE = 0.9;

  /** Hard minutes in a row, at most. Assumption of this project. */
  public static final double USUAL_HARD_MINUTES = 20;

  /** The lowest chance of being done in time that can be asked for. */
  public static final double LOWEST_CONFIDENCE = 0.5;

  /** The highest chance of being done in time that can be asked for. */
  public static final double HIGHEST_CONFIDENCE = 0.99;

  /** The strictest limit of hard minutes in a row. */
  public static final double FEWEST_HARD_MINUTES = 5;

  /** The loosest limit of hard minutes in a row. */
  public static final double MOST_HARD_MINUTES = 120;

  /** The most courts for which one session is planned; more are planned as two groups. */
  public static final int MOST_COURTS = 12;

  /** The most players for whom one session is planned; more are planned as two groups. */
  public static final int MOST_PLAYERS = 40;

  /**
   * The usual wish: every skill group, nine times in ten in time, warm-ups first.
   *
   * @param minutes the booked time in minutes
   * @param courts how many courts are booked
   * @return the wish
   */
  public static SessionWish of(int minutes, int courts) {
    return new SessionWish(
        minutes,
        courts,
        Coverage.FULL,
        USUAL_CONFIDENCE,
        USUAL_HARD_MINUTES,
        WarmUps.FIRST,
        1,
        Requests.NONE);
  }

  /**
   * This wish with another coverage.
   *
   * @param other what the session must touch
   * @return the changed wish
   */
  public SessionWish withCoverage(Coverage other) {
    return new SessionWish(
        minutes, courts, other, confidence, maxHardMinutes, warmUps, seed, requests);
  }

  /**
   * This wish with another confidence.
   *
   * @param other the chance with which the session must fit, 0.5 to 0.99
   * @return the changed wish
   */
  public SessionWish withConfidence(double other) {
    return new SessionWish(
        minutes, courts, coverage, other, maxHardMinutes, warmUps, seed, requests);
  }

  /**
   * This wish with another limit of hard minutes in a row.
   *
   * @param other minutes, 5 to 120
   * @return the changed wish
   */
  public SessionWish withMaxHardMinutes(double other) {
    return new SessionWish(minutes, courts, coverage, confidence, other, warmUps, seed, requests);
  }

  /**
   * This wish with or without warm-ups.
   *
   * @param other whether the session begins with its warm-ups
   * @return the changed wish
   */
  public SessionWish withWarmUps(WarmUps other) {
    return new SessionWish(
        minutes, courts, coverage, confidence, maxHardMinutes, other, seed, requests);
  }

  /**
   * This wish with another seed.
   *
   * @param other any number
   * @return the changed wish
   */
  public SessionWish withSeed(long other) {
    return new SessionWish(
        minutes, courts, coverage, confidence, maxHardMinutes, warmUps, other, requests);
  }

  /**
   * This wish with other requests.
   *
   * @param other what the coach asks for beyond the usual
   * @return the changed wish
   */
  public SessionWish withRequests(Requests other) {
    return new SessionWish(
        minutes, courts, coverage, confidence, maxHardMinutes, warmUps, seed, other);
  }
}
