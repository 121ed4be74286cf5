package rallywright.engine.score;

/**
 * How a game is counted from its first serve to its last point.
 *
 * <p>Start from a named format and change what differs: {@code
 * GameFormat.DRILL_GAME.withStart(Score.of(0, 2))}.
 *
 * @param scoring who may score
 * @param places where players stand for serve and receive
 * @param goal when the game is won
 * @param start the score at the first serve: a head start where it is not 0-0
 * @param firstServer the side that serves first
 * @param ends whether the sides change ends during the game
 */
public record GameFormat(
    Scoring scoring, Places places, Goal goal, Score start, Side firstServer, EndChange ends) {

  /**
   * To 5, win by 1, every rally scores: the default of drill games (common practice, no source).
   */
  public static final GameFormat DRILL_GAME =
      new GameFormat(
          Scoring.EVERY_RALLY,
          Places.HALF_COURT_BY_SCORE,
          Goal.firstTo(5),
          Score.LOVE_ALL,
          Side.A,
          EndChange.NONE);

  /**
   * To 5, win by 1, only the server scores: the default of full games of two on half a court
   * (common practice, no source).
   */
  public static final GameFormat HALF_COURT_GAME =
      DRILL_GAME.withScoring(Scoring.SIDE_OUT_ONE_SERVER);

  /** Singles to 11, win by 2, only the server scores. Source: rule 12.B (2025). */
  public static final GameFormat SINGLES_TO_11 =
      new GameFormat(
          Scoring.SIDE_OUT_ONE_SERVER,
          Places.SINGLES,
          Goal.firstTo(11).withWinBy(WinBy.TWO),
          Score.LOVE_ALL,
          Side.A,
          EndChange.AT_HALF);

  /** Doubles to 11, win by 2, two servers, start 0-0-2. Source: rule 12.B (2025). */
  public static final GameFormat DOUBLES_TO_11 =
      new GameFormat(
          Scoring.SIDE_OUT_TWO_SERVERS,
          Places.PAIRS,
          Goal.firstTo(11).withWinBy(WinBy.TWO),
          Score.LOVE_ALL,
          Side.A,
          EndChange.AT_HALF);

  /** Doubles to 21, win by 2, rally scoring of 2025. Source: rule 12.B.1 (2025). */
  public static final GameFormat DOUBLES_RALLY_2025_TO_21 =
      DOUBLES_TO_11.withScoring(Scoring.RALLY_2025).withGoal(Goal.firstTo(21).withWinBy(WinBy.TWO));

  /** Doubles to 21, win by 2, rally scoring of 2026. Source: section 14.A (2026), second-hand. */
  public static final GameFormat DOUBLES_RALLY_2026_TO_21 =
      DOUBLES_RALLY_2025_TO_21.withScoring(Scoring.RALLY_2026);

  /** Checks that scoring, places and head start fit together. */
  public GameFormat {
    if (scoring == Scoring.SIDE_OUT_TWO_SERVERS && !(places instanceof Places.Pairs)) {
      throw new IllegalArgumentException(
          "Two servers a side (%s) must go with doubles. Maybe one server a side was meant."
              .formatted(places.label()));
    }
    if (scoring == Scoring.SIDE_OUT_ONE_SERVER && places instanceof Places.Pairs) {
      throw new IllegalArgumentException(
          "One server a side (doubles) must go with a game of two. Maybe two servers were meant.");
    }
    for (Side side : Side.values()) {
      if (start.of(side) >= goal.targets().of(side)) {
        throw new IllegalArgumentException(
            "The head start (%d) must be below the target (%d). Maybe %d."
                .formatted(start.of(side), goal.targets().of(side), goal.targets().of(side) - 1));
      }
    }
  }

  /**
   * A copy that is counted in another way.
   *
   * @param other who may score
   * @return the copy
   * @throws IllegalArgumentException if the number of servers does not fit the players
   */
  public GameFormat withScoring(Scoring other) {
    return new GameFormat(other, places, goal, start, firstServer, ends);
  }

  /**
   * A copy with other places for serve and receive.
   *
   * @param other where players stand
   * @return the copy
   * @throws IllegalArgumentException if the number of servers does not fit the players
   */
  public GameFormat withPlaces(Places other) {
    return new GameFormat(scoring, other, goal, start, firstServer, ends);
  }

  /**
   * A copy with another goal.
   *
   * @param other when the game is won
   * @return the copy
   * @throws IllegalArgumentException if the head start reaches the new target
   */
  public GameFormat withGoal(Goal other) {
    return new GameFormat(scoring, places, other, start, firstServer, ends);
  }

  /**
   * A copy with another target, the same lead and no cap.
   *
   * @param target points, 1 to {@value Goal#MAX_TARGET}
   * @return the copy
   * @throws IllegalArgumentException if the target lies outside or the head start reaches it
   */
  public GameFormat withTarget(int target) {
    return withGoal(Goal.firstTo(target).withWinBy(goal.winBy()));
  }

  /**
   * A copy with a head start.
   *
   * @param score the score at the first serve, each side below its target
   * @return the copy
   * @throws IllegalArgumentException if a side would start at its target
   */
  public GameFormat withStart(Score score) {
    return new GameFormat(scoring, places, goal, score, firstServer, ends);
  }

  /**
   * A copy in which another side serves first.
   *
   * @param side the side that serves first
   * @return the copy
   */
  public GameFormat withFirstServer(Side side) {
    return new GameFormat(scoring, places, goal, start, side, ends);
  }

  /**
   * A copy with or without a change of ends.
   *
   * @param change whether the sides change ends
   * @return the copy
   */
  public GameFormat withEnds(EndChange change) {
    return new GameFormat(scoring, places, goal, start, firstServer, change);
  }

  /**
   * The first serve of the game: in doubles with two servers the exception, one server only.
   *
   * @return who serves first
   */
  public Serve firstServe() {
    ServerNumber number = scoring.hasTwoServers() ? ServerNumber.SECOND : ServerNumber.FIRST;
    return new Serve(firstServer, number, Partner.RIGHT_AT_EVEN);
  }

  /**
   * Whether the next point would end the game.
   *
   * @param side who would score it
   * @param score the score before the point
   * @return true if that point ends the game
   */
  public boolean endsWithPointTo(Side side, Score score) {
    return goal.winnerAt(score.pointTo(side)).isPresent();
  }

  /**
   * Whether a rally won by a side brings it a point.
   *
   * @param winner who wins the rally
   * @param server who served it
   * @param score the score before it
   * @return true if the point counts
   */
  public boolean scores(Side winner, Side server, Score score) {
    if (winner == server) {
      return true;
    }
    return scoring.everyRallyScores()
        && (scoring.receiversMayEndGame() || !endsWithPointTo(winner, score));
  }

  /**
   * The format in words.
   *
   * @return for example "to 5, win by 1, every rally scores"
   */
  public String label() {
    String text = goal.label() + ", " + scoring.label();
    return start.equals(Score.LOVE_ALL) ? text : text + ", starts at " + start;
  }
}
