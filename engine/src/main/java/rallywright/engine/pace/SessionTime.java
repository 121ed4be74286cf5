package rallywright.engine.pace;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.quantity.StandardNormal;

/**
 * The time of a whole session: its blocks, the uncertainty of each drill's pace, and a pace factor
 * of the day that all blocks share.
 *
 * <p>With T the mean: variance = Σ variances of the blocks + Σ over drills (uncertainty × the
 * drill's minutes)² + (cv × T)².
 */
public final class SessionTime {

  /**
   * How much a whole session runs slower or faster than usual: standard deviation of a factor with
   * mean 1. Assumption of this project.
   */
  public static final double DAY_CV = 0.05;

  private final Timing timing;

  private SessionTime(Timing timing) {
    this.timing = timing;
  }

  /**
   * One block as the session's time sees it.
   *
   * @param drill whose pace it depends on
   * @param seconds the block's time when the drill goes at its mean pace
   * @param pacedSeconds the part of the mean that the drill's pace stretches: 0 where a horn ends
   *     it
   * @param drillCv the uncertainty of the drill's pace, see {@link RallyPace#drillCv()}
   */
  public record Part(DrillKey drill, Timing seconds, double pacedSeconds, double drillCv) {

    /** Checks the range; the check is written so that NaN fails it. */
    public Part {
      if (!(pacedSeconds >= 0 && drillCv >= 0)) {
        throw new IllegalArgumentException(
            "The paced seconds (%s) and the pace's uncertainty (%s) must be 0 or more."
                .formatted(pacedSeconds, drillCv));
      }
    }

    /**
     * The block by itself, its drill's uncertainty included.
     *
     * @return mean and variance
     */
    public Timing alone() {
      double shared = drillCv * pacedSeconds;
      return new Timing(seconds.mean(), seconds.variance() + shared * shared);
    }
  }

  /**
   * The time of a session.
   *
   * @param parts its blocks with everything that belongs to them
   * @return the time
   */
  public static SessionTime of(List<Part> parts) {
    Timing sum = Timing.NOTHING;
    Map<DrillKey, Double> sharedSeconds = new LinkedHashMap<>();
    for (Part part : parts) {
      sum = sum.then(part.seconds());
      sharedSeconds.merge(part.drill(), part.drillCv() * part.pacedSeconds(), Double::sum);
    }
    double shared = sharedSeconds.values().stream().mapToDouble(each -> each * each).sum();
    double day = DAY_CV * sum.mean();
    return new SessionTime(new Timing(sum.mean(), sum.variance() + shared + day * day));
  }

  /**
   * Mean and variance.
   *
   * @return in seconds
   */
  public Timing timing() {
    return timing;
  }

  /**
   * The time that suffices with a chance, by the normal distribution: a session is a sum of many
   * parts.
   *
   * @param confidence above 0 and below 1, for example 0.9
   * @return in seconds
   */
  public double quantile(double confidence) {
    return Math.max(0, timing.mean() + StandardNormal.quantile(confidence) * timing.sd());
  }

  /**
   * How many standard deviations are kept in reserve.
   *
   * @param confidence above 0 and below 1
   * @return for example 1.2816 for 0.9
   */
  public static double reserve(double confidence) {
    return StandardNormal.quantile(confidence);
  }
}
