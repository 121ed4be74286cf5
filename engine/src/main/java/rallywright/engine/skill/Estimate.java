package rallywright.engine.skill;

import rallywright.engine.quantity.StandardNormal;

/**
 * A number that is not known exactly: mean and spread of a normal distribution.
 *
 * @param mean in the unit of what is estimated
 * @param sd its standard deviation, 0 or more
 */
public record Estimate(double mean, double sd) {
  /** The 90 % quantile of the standard normal: four fifths lie within this many SDs of the mean. */
  private static final double SDS_OF_80_PERCENT = 1.2815515655446004;

  /** Checks the ranges; the checks are written so that NaN fails them. */
  public Estimate {
    if (!(Math.abs(mean) < Double.POSITIVE_INFINITY && sd >= 0 && sd < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The estimate (" + mean + " ± " + sd + ") must be a number with an SD of 0 or more.");
    }
  }

  /**
   * The lower end of the 80 % interval.
   *
   * @return mean − 1.28 SD
   */
  public double low80() {
    return mean - SDS_OF_80_PERCENT * sd;
  }

  /**
   * The upper end of the 80 % interval.
   *
   * @return mean + 1.28 SD
   */
  public double high80() {
    return mean + SDS_OF_80_PERCENT * sd;
  }

  /**
   * The chance that the true number lies above a value.
   *
   * @param value in the same unit
   * @return from 0 to 1
   */
  public double chanceAbove(double value) {
    if (sd == 0) {
      return mean > value ? 1 : 0;
    }
    return StandardNormal.below((mean - value) / sd);
  }
}
