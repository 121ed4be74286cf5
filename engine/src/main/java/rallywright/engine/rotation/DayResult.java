package rallywright.engine.rotation;

import rallywright.engine.score.Side;

/**
 * The score of one match of a day.
 *
 * @param round its round, from 1
 * @param match its place in the round, from 0
 * @param pointsA points of side A, 0 to {@value #MOST_POINTS}
 * @param pointsB points of side B, likewise and not the same
 */
public record DayResult(int round, int match, int pointsA, int pointsB) {

  /** More points than this are a slip. */
  public static final int MOST_POINTS = 99;

  /** Checks the points. */
  public DayResult {
    if (pointsA < 0 || pointsB < 0 || pointsA > MOST_POINTS || pointsB > MOST_POINTS) {
      throw new IllegalArgumentException(
          "The score (%d-%d) must be 0 to %d points a side. Maybe a digit slipped in."
              .formatted(pointsA, pointsB, MOST_POINTS));
    }
    if (pointsA == pointsB) {
      throw new IllegalArgumentException(
          "The score (%d-%d) must have a winner. Maybe play one more rally, or correct a side."
              .formatted(pointsA, pointsB));
    }
  }

  /**
   * Who won.
   *
   * @return the side with more points
   */
  public Side winner() {
    return pointsA > pointsB ? Side.A : Side.B;
  }

  boolean isOf(int otherRound, int otherMatch) {
    return round == otherRound && match == otherMatch;
  }
}
