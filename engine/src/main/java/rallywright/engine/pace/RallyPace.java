package rallywright.engine.pace;

import java.util.List;

/**
 * How long one rally of a drill takes, play and the wait after it together, and how sure we are.
 *
 * <p><b>Card.</b> In: a first idea of the seconds in play and between rallies; then recorded times.
 * Out: mean and spread of a rally, and the uncertainty of the drill's typical pace. Valid: rallies
 * of 1 second to some minutes. Limits: rallies are taken as independent; tiredness, wind and a ball
 * in the next field are in the spread only. Model: the logarithm of a rally's seconds is normal
 * with a mean that differs from drill to drill; that mean has a normal prior, so the update by
 * recorded times is conjugate (textbook result; Gelman et al., <em>Bayesian Data Analysis</em>,
 * section 2.5, cited from memory).
 *
 * @param typical the logarithm of the drill's typical seconds per rally: our estimate of it and the
 *     uncertainty of that estimate
 * @param rallyLogSd how much single rallies differ around it, on the log scale, 0 or more
 */
public record RallyPace(LogNormal typical, double rallyLogSd) {

  /**
   * How far a drill's true pace may lie from a first idea, on the log scale: about 20 %. Assumption
   * of this project.
   */
  public static final double FIRST_IDEA_LOG_SD = 0.2;

  /** Checks the range; the check is written so that NaN fails it. */
  public RallyPace {
    if (!(rallyLogSd >= 0 && rallyLogSd < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The spread of rallies (%s) must be 0 or more.".formatted(rallyLogSd));
    }
  }

  /**
   * A first idea, before any time was recorded.
   *
   * @param inPlay seconds of a rally while the ball is in play
   * @param between seconds from one rally's end to the next one's start
   * @return the pace, known to about 20 %
   */
  public static RallyPace firstIdea(LogNormal inPlay, LogNormal between) {
    LogNormal both = inPlay.then(between);
    return new RallyPace(new LogNormal(both.logMean(), FIRST_IDEA_LOG_SD), both.logSd());
  }

  /**
   * What is known after single rallies were timed.
   *
   * @param seconds from each rally's start to the next one's, each above 0
   * @return the sharper pace
   * @throws IllegalArgumentException if a time is not above 0
   */
  public RallyPace afterRallies(List<Double> seconds) {
    RallyPace pace = this;
    for (double each : seconds) {
      pace = pace.after(logOf(each), rallyLogSd * rallyLogSd);
    }
    return pace;
  }

  /**
   * What is known after a game, or the games of a lane in a block, took a time.
   *
   * <p>The mean of r rallies is taken as log-normal with the mean and variance that it has; its log
   * mean lies above that of a single rally.
   *
   * @param rallies how many rallies were played, 1 or more
   * @param seconds how long they took together, above 0
   * @return the sharper pace
   * @throws IllegalArgumentException if a number lies outside
   */
  public RallyPace afterGame(int rallies, double seconds) {
    if (rallies < 1) {
      throw new IllegalArgumentException(
          "A recorded game needs 1 rally or more, but had %d.".formatted(rallies));
    }
    double rallyVariance = rallyLogSd * rallyLogSd;
    double meanVariance = Math.log1p(Math.expm1(rallyVariance) / rallies);
    double shift = (rallyVariance - meanVariance) / 2;
    return after(logOf(seconds / rallies) - shift, meanVariance);
  }

  private static double logOf(double seconds) {
    if (!(seconds > 0 && seconds < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "A recorded time (%s s) must be above 0 seconds.".formatted(seconds));
    }
    return Math.log(seconds);
  }

  private RallyPace after(double log, double variance) {
    double before = typical.logSd() * typical.logSd();
    if (before == 0) {
      return this;
    }
    double trust = before / (before + variance);
    double mean = typical.logMean() + trust * (log - typical.logMean());
    return new RallyPace(new LogNormal(mean, Math.sqrt(before * (1 - trust))), rallyLogSd);
  }

  /**
   * The mean time of a rally.
   *
   * @return in seconds
   */
  public double meanSeconds() {
    return typical.mean() * Math.exp(rallyLogSd * rallyLogSd / 2);
  }

  /**
   * How much single rallies differ when the drill's pace is at its mean.
   *
   * @return variance in square seconds
   */
  public double rallyVariance() {
    double mean = meanSeconds();
    return Math.expm1(rallyLogSd * rallyLogSd) * mean * mean;
  }

  /**
   * How lopsided the times of single rallies are when the drill's pace is at its mean: the third
   * central moment of a log-normal.
   *
   * @return in cubic seconds
   */
  public double rallyThird() {
    double w = Math.exp(rallyLogSd * rallyLogSd);
    double mean = meanSeconds();
    return (w - 1) * (w - 1) * (w + 2) * mean * mean * mean;
  }

  /**
   * How unsure the drill's pace is: it stretches all its games alike.
   *
   * @return standard deviation of a factor with mean 1
   */
  public double drillCv() {
    return Math.sqrt(Math.expm1(typical.logSd() * typical.logSd()));
  }
}
