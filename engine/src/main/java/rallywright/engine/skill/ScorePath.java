package rallywright.engine.skill;

/**
 * A score of which the rallies were not written down: where the game started, where it stood at the
 * end, and under which rules it got there.
 *
 * @param counting who may score
 * @param start points given as a head start; they are not points won
 * @param end the score at the end, head start included
 * @param finish when a game is over
 * @param ending played out, or time called
 * @param firstServer who served first
 */
public record ScorePath(
    Counting counting,
    Points start,
    Points end,
    Finish finish,
    Ending ending,
    FirstServer firstServer)
    implements Result {

  /** Who may score. The winner of a rally serves the next one in both. */
  public enum Counting {
    /** Only the serving side scores; one server a side. */
    SERVER_ONLY,
    /** Every rally scores. */
    EVERY_RALLY
  }

  /** How a game came to its end. */
  public enum Ending {
    /** Played out. */
    FINISHED,
    /** Cut off by the clock: the score is kept as it stands. */
    TIME_CALLED
  }

  /** Who served first. */
  public enum FirstServer {
    /** Side A. */
    A,
    /** Side B. */
    B,
    /** Nobody wrote it down: either with one half. */
    UNKNOWN
  }

  /**
   * When a game is over.
   *
   * @param target points to reach, 1 or more
   * @param winBy points to be ahead, 1 or 2
   */
  public record Finish(int target, int winBy) {
    /** Checks the ranges. */
    public Finish {
      if (target < 1 || winBy < 1 || winBy > 2) {
        throw new IllegalArgumentException(
            "The target ("
                + target
                + ") must be 1 or more and the lead to win by ("
                + winBy
                + ") 1 or 2.");
      }
    }

    boolean over(int a, int b) {
      return Math.max(a, b) >= target && Math.abs(a - b) >= winBy;
    }
  }

  /** Checks that the rules can lead from the start to the end. */
  public ScorePath {
    if (end.a() < start.a() || end.b() < start.b()) {
      throw new IllegalArgumentException(
          "The score ("
              + end.a()
              + "-"
              + end.b()
              + ") must not lie below the head start ("
              + start.a()
              + "-"
              + start.b()
              + "). Maybe the head start was left out of the score.");
    }
    if (finish.over(start.a(), start.b())) {
      throw new IllegalArgumentException(
          "The head start ("
              + Math.max(start.a(), start.b())
              + ") must be below the target ("
              + finish.target()
              + "). Maybe the target is higher.");
    }
    if (finish.over(end.a(), end.b()) != (ending == Ending.FINISHED) || !reachable(end, finish)) {
      throw new IllegalArgumentException(
          "The score ("
              + end.a()
              + "-"
              + end.b()
              + ") cannot be where a game to "
              + finish.target()
              + ", win by "
              + finish.winBy()
              + ", "
              + (ending == Ending.FINISHED ? "ended" : "stood when time was called")
              + ". Maybe the target is another one, or time was "
              + (ending == Ending.FINISHED ? "called." : "not called."));
    }
  }

  private static boolean reachable(Points end, Finish finish) {
    boolean fromA = end.a() > 0 && !finish.over(end.a() - 1, end.b());
    boolean fromB = end.b() > 0 && !finish.over(end.a(), end.b() - 1);
    boolean aWonLast = !finish.over(end.a(), end.b()) || end.a() > end.b();
    boolean bWonLast = !finish.over(end.a(), end.b()) || end.b() > end.a();
    return end.equals(Points.NONE) || (aWonLast && fromA) || (bWonLast && fromB);
  }

  int pointsA() {
    return end.a() - start.a();
  }

  int pointsB() {
    return end.b() - start.b();
  }

  /** Whether the game is over when the sides have won this many points. */
  boolean over(int wonA, int wonB) {
    return finish.over(start.a() + wonA, start.b() + wonB);
  }

  double chanceThatAServesFirst() {
    return switch (firstServer) {
      case A -> 1;
      case B -> 0;
      case UNKNOWN -> 0.5;
    };
  }
}
