package rallywright.engine.drill;

import rallywright.engine.quantity.Source;

/**
 * What the first role of a drill is worth in a rally between equals, before any game was seen.
 *
 * @param logit the log odds that the first role wins a rally between equals, within ±3
 * @param sd how sure that is: the standard deviation of the logit, 0 (fixed) to 2
 * @param source where the two numbers come from
 */
public record RoleAdvantage(double logit, double sd, Source source) {

  /** How sure a role's advantage is before any game: an assumption of this project. */
  public static final double PRIOR_SD = 0.4;

  /** Both do the same: exactly none, because A and B are only names. */
  public static final RoleAdvantage NONE = new RoleAdvantage(0, 0, new Source("by symmetry"));

  private static final double MOST = 3;
  private static final double MOST_SD = 2;

  /** Checks the ranges; the checks are written so that NaN fails them. */
  public RoleAdvantage {
    if (!(Math.abs(logit) <= MOST)) {
      throw new IllegalArgumentException(
          "The advantage of the first role (%s) must lie from -3 to 3 in log odds.".formatted(logit)
              + " Maybe -0.85, which is three rallies in ten.");
    }
    if (!(sd >= 0 && sd <= MOST_SD)) {
      throw new IllegalArgumentException(
          "The spread of the advantage (%s) must lie from 0 to 2. Maybe 0.4.".formatted(sd));
    }
  }

  /**
   * An advantage as this project assumes it.
   *
   * @param logit the log odds that the first role wins a rally between equals, within ±3
   * @return the advantage with the spread {@link #PRIOR_SD}
   */
  public static RoleAdvantage assumed(double logit) {
    return new RoleAdvantage(logit, PRIOR_SD, Source.ASSUMPTION);
  }

  /**
   * The chance that the first role wins a rally between equals.
   *
   * @return 0 to 1
   */
  public double chanceBetweenEquals() {
    return 1 / (1 + Math.exp(-logit));
  }
}
