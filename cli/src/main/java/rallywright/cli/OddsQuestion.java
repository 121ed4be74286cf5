package rallywright.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Score;
import rallywright.engine.score.Serve;

/**
 * What {@code odds} is asked, checked.
 *
 * @param format how the game is counted
 * @param chances the chances of a rally
 * @param given how many chances were given for each name, in the order of the answer's derivatives
 * @param score the points now
 * @param serve who serves now
 * @param fair the wished chance of A, where a head start is asked for
 * @param firstServe who serves first from a head start
 */
record OddsQuestion(
    GameFormat format,
    RallyChances chances,
    List<Given> given,
    Score score,
    Serve serve,
    Optional<Probability> fair,
    Function<Score, Serve> firstServe) {

  /**
   * A name under which chances were given.
   *
   * @param name the name of the derivative
   * @param places which of the engine's chances belong to it
   * @param shape whether the answer is one number or one for each chance
   */
  record Given(String name, List<Integer> places, Shape shape) {}

  /** How the derivatives of a name are answered. */
  enum Shape {
    /** One number: the slopes of all its chances together. */
    ONE_NUMBER,
    /** One number for each chance. */
    ONE_EACH
  }
}
