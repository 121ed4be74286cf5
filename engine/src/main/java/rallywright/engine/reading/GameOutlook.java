package rallywright.engine.reading;

import rallywright.engine.score.Score;

/**
 * What to expect of a game between two sides, with what is not known about the players in it.
 *
 * @param pointsA expected points of side A
 * @param pointsB expected points of side B
 * @param winA the chance that side A wins, 0 to 1
 * @param worstForA the score such that four games in five end between it and the next, A's worse
 *     end
 * @param bestForA A's better end
 */
public record GameOutlook(
    double pointsA, double pointsB, double winA, Score worstForA, Score bestForA) {

  /**
   * Whether a score lies in the range that four games in five fall into.
   *
   * @param score a score, side A first
   * @return true if it is nothing to wonder about
   */
  public boolean expects(Score score) {
    int lead = score.a() - score.b();
    return lead >= worstForA.a() - worstForA.b() && lead <= bestForA.a() - bestForA.b();
  }
}
