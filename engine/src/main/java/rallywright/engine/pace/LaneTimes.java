package rallywright.engine.pace;

import java.util.List;

/**
 * The times of several lanes that play side by side.
 *
 * <p>For the maintainer: each lane has the distribution of {@link Timing#within}, which keeps its
 * first three moments: the number of rallies of a game is bounded, so its time is far less skewed
 * than that of one rally, and a log-normal lane would make the last lane's spread a fifth too wide.
 * With F the chance that all lanes are done, E[max] = ∫ (1 - F) dt, E[max²] = ∫ 2t (1 - F) dt and
 * E[max³] = ∫ 3t² (1 - F) dt, by Simpson's rule. A pace factor that all lanes share multiplies the
 * maximum as it multiplies each lane, so it is taken out here and put back by {@link
 * Timing#stretched}; no second integral is needed.
 */
public final class LaneTimes {

  private static final int STEPS = 400;
  private static final double FARTHEST_Z = 8;

  private final List<Timing> lanes;

  private LaneTimes(List<Timing> lanes) {
    this.lanes = List.copyOf(lanes);
  }

  /**
   * Lanes with these times.
   *
   * @param timings mean and variance of each lane, each with a mean above 0
   * @return the lanes
   * @throws IllegalArgumentException if there is none
   */
  public static LaneTimes of(List<Timing> timings) {
    if (timings.isEmpty()) {
      throw new IllegalArgumentException("The time of the last lane needs one lane or more.");
    }
    return new LaneTimes(timings);
  }

  /**
   * When the last lane is done.
   *
   * @return mean, variance and third central moment of the maximum over the lanes
   */
  public Timing last() {
    if (lanes.size() == 1) {
      return lanes.get(0);
    }
    double end = lanes.stream().mapToDouble(LaneTimes::farthest).max().orElseThrow();
    double mean = 0;
    double square = 0;
    double cube = 0;
    // Simpson's rule from 0 to the end on a grid that is finer near 0, where t = end·u².
    for (int step = 1; step <= STEPS; step++) {
      double u = (double) step / STEPS;
      double seconds = end * u * u;
      double weight = step == STEPS ? 1 : step % 2 == 1 ? 4 : 2;
      double part = weight * (1 - allWithin(seconds)) * 2 * end * u / STEPS / 3;
      mean += part;
      square += 2 * seconds * part;
      cube += 3 * seconds * seconds * part;
    }
    double third = cube - 3 * mean * square + 2 * mean * mean * mean;
    return new Timing(mean, Math.max(0, square - mean * mean), third);
  }

  /**
   * The time within which a lane is done with a chance, for the slowest kind of lane.
   *
   * @param chance above 0 and below 1
   * @return in seconds
   */
  public double slowestQuantile(double chance) {
    return lanes.stream().mapToDouble(lane -> lane.quantile(chance)).max().orElseThrow();
  }

  private double allWithin(double seconds) {
    double chance = 1;
    double within = 1;
    Timing before = Timing.NOTHING;
    for (Timing lane : lanes) {
      within = lane.equals(before) ? within : lane.within(seconds);
      chance *= within;
      before = lane;
    }
    return chance;
  }

  private static double farthest(Timing lane) {
    return (lane.mean() + FARTHEST_Z * lane.sd()) * (1 + 1e-9);
  }
}
