package rallywright.engine.pace;

import rallywright.engine.odds.RallyMoments;

/** The time of one game: a random number of rallies, each of a random length. */
public final class GameTime {

  private GameTime() {}

  /**
   * The time of a game whose drill goes at its mean pace; the uncertainty of that pace is shared by
   * all games of the drill and comes in with the block.
   *
   * <p>With N rallies of mean m and variance v: E[T] = E[N] m and var(T) = E[N] v + var(N) m², the
   * moments of a random sum, exact.
   *
   * @param rallies mean and spread of the number of rallies
   * @param pace seconds per rally
   * @return mean and variance
   */
  public static Timing of(RallyMoments rallies, RallyPace pace) {
    double mean = pace.meanSeconds();
    double variance =
        rallies.mean() * pace.rallyVariance() + rallies.sd() * rallies.sd() * mean * mean;
    return new Timing(rallies.mean() * mean, variance);
  }
}
