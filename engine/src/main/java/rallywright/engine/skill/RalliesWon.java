package rallywright.engine.skill;

import rallywright.engine.score.Score;

/**
 * The rallies that each side won, whoever served: a game in which every rally scores, without the
 * points given as a head start. The rule that ends the game drops out of the likelihood, so a game
 * cut off by the clock counts as fully as any other.
 *
 * @param a rallies that side A won, 0 or more
 * @param b rallies that side B won, 0 or more
 */
public record RalliesWon(int a, int b) implements Result {
  /** Checks the ranges. */
  public RalliesWon {
    if (a < 0 || b < 0) {
      throw new IllegalArgumentException(
          "The rallies won ("
              + a
              + ", "
              + b
              + ") must be 0 or more. Maybe the head start is"
              + " larger than the score.");
    }
  }

  /**
   * The rallies behind a score in which every rally scores.
   *
   * @param start the head start
   * @param end the score, head start included
   * @return the rallies won
   */
  public static RalliesWon between(Score start, Score end) {
    return new RalliesWon(end.a() - start.a(), end.b() - start.b());
  }
}
