package rallywright.engine.skill;

import java.util.random.RandomGenerator;

/**
 * Two numbers that are not known exactly and hang together: a two-dimensional normal distribution.
 *
 * @param first mean and SD of one
 * @param second mean and SD of the other
 * @param covariance how they vary together, in the product of their units
 */
public record JointEstimate(Estimate first, Estimate second, double covariance) {
  /** Round-off that the product of two SDs may fall short of the covariance by, as a share. */
  private static final double ROUND_OFF = 1e-9;

  /** Checks that such a distribution exists; the check is written so that NaN fails it. */
  public JointEstimate {
    double most = first.sd() * second.sd();
    if (!(Math.abs(covariance) <= most * (1 + ROUND_OFF) + Double.MIN_NORMAL)) {
      throw new IllegalArgumentException(
          "The covariance ("
              + covariance
              + ") must lie within the product of the SDs ("
              + most
              + ").");
    }
  }

  /**
   * The second less the first.
   *
   * @return mean and SD of the difference
   */
  public Estimate difference() {
    double variance = first.sd() * first.sd() + second.sd() * second.sd() - 2 * covariance;
    return new Estimate(second.mean() - first.mean(), Math.sqrt(Math.max(0, variance)));
  }

  /**
   * One draw of both.
   *
   * @param random the seeded source of chance
   * @return the first and the second
   */
  public double[] draw(RandomGenerator random) {
    double z = random.nextGaussian();
    double slope = first.sd() > 0 ? covariance / first.sd() : 0;
    double rest = Math.sqrt(Math.max(0, second.sd() * second.sd() - slope * slope));
    return new double[] {
      first.mean() + first.sd() * z, second.mean() + slope * z + rest * random.nextGaussian()
    };
  }
}
