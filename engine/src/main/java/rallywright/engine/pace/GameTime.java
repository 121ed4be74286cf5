package rallywright.engine.pace;

import rallywright.engine.odds.RallyMoments;

/** The time of one game: a random number of rallies, each of a random length. */
public final class GameTime {

  private GameTime() {}

  /**
   * The time of a game whose drill goes at its mean pace; the uncertainty of that pace is shared by
   * all games of the drill and comes in with the block.
   *
   * <p>With N rallies of mean m, variance v and third central moment w: E[T] = E[N] m, var(T) =
   * E[N] v + var(N) m² and the third central moment is E[N] w + 3 var(N) m v + third(N) m³, the
   * moments of a random sum, exact.
   *
   * @param rallies mean and spread of the number of rallies
   * @param pace seconds per rally
   * @return mean, variance and third central moment
   */
  public static Timing of(RallyMoments rallies, RallyPace pace) {
    double mean = pace.meanSeconds();
    double spread = rallies.sd() * rallies.sd();
    double variance = rallies.mean() * pace.rallyVariance() + spread * mean * mean;
    double third =
        rallies.mean() * pace.rallyThird()
            + 3 * spread * mean * pace.rallyVariance()
            + rallies.third() * mean * mean * mean;
    return new Timing(rallies.mean() * mean, variance, third);
  }
}
