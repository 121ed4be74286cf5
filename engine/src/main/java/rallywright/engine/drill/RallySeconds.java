package rallywright.engine.drill;

import rallywright.engine.quantity.Source;

/**
 * How long one rally takes before any was timed.
 *
 * @param inPlay from the feed or serve until the ball is dead
 * @param between from there to the next feed or serve
 * @param source where the numbers come from
 */
public record RallySeconds(SecondsPrior inPlay, SecondsPrior between, Source source) {

  /**
   * The mean of both together.
   *
   * @return seconds
   */
  public double mean() {
    return inPlay.mean() + between.mean();
  }

  /**
   * The standard deviation of both together, taken as independent.
   *
   * @return seconds
   */
  public double sd() {
    return Math.hypot(inPlay.sd(), between.sd());
  }
}
