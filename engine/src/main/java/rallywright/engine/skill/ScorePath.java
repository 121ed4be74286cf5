package rallywright.engine.skill;

import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/**
 * A score of which the rallies were not written down: where the game started, where it stood at the
 * end, and under which rules it got there.
 *
 * @param counting who may score
 * @param start points given as a head start; they are not points won
 * @param end the score at the end, head start included
 * @param goal when the game is won
 * @param ending played out, or time called
 * @param firstServer who served first
 */
public record ScorePath(
    Counting counting, Score start, Score end, Goal goal, Ending ending, FirstServer firstServer)
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
    A(1),
    /** Side B. */
    B(0),
    /** Nobody wrote it down: either with one half. */
    UNKNOWN(0.5);

    private final double chanceOfA;

    FirstServer(double chanceOfA) {
      this.chanceOfA = chanceOfA;
    }

    double chanceOfA() {
      return chanceOfA;
    }
  }

  /** Checks that the rules can lead from the start to the end. */
  public ScorePath {
    if (end.a() < start.a() || end.b() < start.b()) {
      throw new IllegalArgumentException(
          ("The score (%s) must not lie below the head start (%s). "
                  + "Maybe the head start was left out of the score.")
              .formatted(end, start));
    }
    if (!goal.isOpenAt(start)) {
      throw new IllegalArgumentException(
          ("The head start (%s) must be below the target of a game %s. "
                  + "Maybe the target is higher.")
              .formatted(start, goal.label()));
    }
    if (ending == Ending.FINISHED && !endsAt(goal, end)) {
      throw new IllegalArgumentException(
          ("The score (%s) cannot be where a game %s ended. Maybe the "
                  + "target is another one, or time was called.")
              .formatted(end, goal.label()));
    }
    if (ending == Ending.TIME_CALLED && !goal.isOpenAt(end)) {
      throw new IllegalArgumentException(
          ("The score (%s) cannot be where a game %s stood when time "
                  + "was called. Maybe it was played out.")
              .formatted(end, goal.label()));
    }
  }

  /** Whether a game may end here: with one point less for the winner it goes on. */
  private static boolean endsAt(Goal goal, Score score) {
    Side winner = goal.winnerAt(score).orElse(null);
    if (winner == null) {
      return false;
    }
    boolean byA = winner == Side.A;
    return goal.isOpenAt(Score.of(score.a() - (byA ? 1 : 0), score.b() - (byA ? 0 : 1)));
  }

  int pointsA() {
    return end.a() - start.a();
  }

  int pointsB() {
    return end.b() - start.b();
  }

  /** Whether the game goes on when the sides have won this many points. */
  boolean goesOnAfter(int wonA, int wonB) {
    return goal.isOpenAt(Score.of(start.a() + wonA, start.b() + wonB));
  }
}
