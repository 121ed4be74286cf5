package rallywright.engine.flight;

import rallywright.engine.court.Net;
import rallywright.engine.quantity.StandardNormal;

/**
 * How likely distances of landings, and a number of balls in the net, are under a scatter of speed
 * and elevation.
 *
 * <p>A landing counts with its density: the launches that land there and clear the net, summed over
 * elevations, each with the speed that goes so far. A ball in the net counts with the chance of not
 * clearing it: where it would have landed nobody saw. Unknown are the speed aimed at and the size
 * of the scatter, whose parts keep their proportion.
 *
 * <p>For the maintainer: what flights do does not depend on the unknowns, so a few thousand are
 * flown once, at the mean bearing; the rest is sums. How sure: both unknowns are taken as equally
 * likely on the scales of speed and log scatter and the tenths of what then follows for the scatter
 * are given. Without balls in the net and for small scatter that is the chi-squared range of normal
 * theory; a benchmark counts how often it holds the truth.
 */
final class LandingLikelihood {

  private static final int SPEEDS = 28;
  private static final double SPEED_FACTOR = 4;
  private static final int SHARES = 25;
  private static final double AIM_STEP = 0.8;
  private static final double AIM_REACH = 5;
  private static final double ELEVATION_REACH = 4;
  private static final double FINENESS = 0.8;
  private static final double STEEPEST = Math.toRadians(85);
  private static final int HALVINGS = 30;
  private static final double SMALL = 1e-4;
  private static final double TENTH = 0.1;

  private final Start start;
  private final double[] distances;
  private final int inTheNet;
  private final double[] shares = new double[SHARES];
  private final double[] elevations;
  private final double elevationStep;

  /** For each elevation and landing the speed that goes there, and its density by distance. */
  private final double[][] speeds;

  private final double[][] densities;

  /** For each elevation the speed that clears the net. */
  private final double[] clearing;

  /**
   * Where the search begins.
   *
   * @param aim speed, elevation and bearing of the mean landing
   * @param unit the scatter whose multiples are looked through
   * @param share what multiple landings alone say to first order
   * @param effect of one unit of scatter on the distance, as a share of speed
   */
  record Start(LaunchAim aim, Scatter unit, double share, double effect) {}

  /**
   * What comes out.
   *
   * @param share the most likely multiple of the unit
   * @param least the multiple below which the truth lies once in ten
   * @param most the multiple above which it lies once in ten
   */
  record Likely(double share, double least, double most) {}

  LandingLikelihood(Shot shot, Start start, double[] distances, int inTheNet) {
    this.start = start;
    this.distances = distances.clone();
    this.inTheNet = inTheNet;
    double spread = 1 / Math.sqrt(2.0 * distances.length);
    double low = -4.5 * spread;
    double high = 7 * spread + (inTheNet > 0 ? 0.7 : 0);
    for (int s = 0; s < SHARES; s++) {
      shares[s] = start.share() * Math.exp(low + (high - low) * s / (SHARES - 1));
    }
    double finest = FINENESS * shares[0] * start.unit().elevation();
    double reach = ELEVATION_REACH * shares[SHARES - 1] * start.unit().elevation();
    double from = Math.max(-STEEPEST, start.aim().elevation() - reach);
    double to = Math.min(STEEPEST, start.aim().elevation() + reach);
    int count = 1 + (int) Math.ceil((to - from) / finest);
    elevationStep = (to - from) / (count - 1);
    elevations = new double[count];
    speeds = new double[count][];
    densities = new double[count][];
    clearing = new double[count];
    ShotTrial trial = shot.trial();
    double[][] airs = new double[count][];
    for (int j = 0; j < count; j++) {
      elevations[j] = from + j * elevationStep;
      airs[j] = new Column(trial, shot, elevations[j]).read(j);
    }
    weighByNet(airs);
  }

  /** Flights of one elevation, by the logarithm of their speed. */
  private final class Column {
    private final Axis logs =
        new Axis(
            SPEEDS,
            Math.log(start.aim().speed() / SPEED_FACTOR),
            Math.log(start.aim().speed() * SPEED_FACTOR));
    private final double[] ranges = new double[SPEEDS];
    private final double[] airs = new double[SPEEDS];
    private final double[] weights = new double[Axis.NEIGHBOURS];

    Column(ShotTrial trial, Shot shot, double elevation) {
      for (int i = 0; i < SPEEDS; i++) {
        trial.fly(Math.exp(logs.point(i)), elevation, start.aim().bearing());
        ranges[i] = range(trial, shot);
        double height = Double.isNaN(trial.netZ()) ? Requirement.NOWHERE_NEAR : trial.netZ();
        double top = Double.isNaN(trial.netY()) ? 0 : Net.heightM(trial.netY());
        airs[i] = Math.max(-3, height - trial.radius() - top);
      }
    }

    /** Reads speeds, densities and the speed that clears; answers the air of each landing. */
    double[] read(int j) {
      int n = distances.length;
      speeds[j] = new double[n];
      densities[j] = new double[n];
      double[] air = new double[n];
      for (int i = 0; i < n; i++) {
        double log = where(ranges, distances[i]);
        if (Double.isFinite(log)) {
          double slope = (at(ranges, log + SMALL) - at(ranges, log - SMALL)) / (2 * SMALL);
          speeds[j][i] = Math.exp(log);
          densities[j][i] = speeds[j][i] / Math.max(1e-9, slope);
          air[i] = at(airs, log);
        }
      }
      clearing[j] = Math.exp(where(airs, 0));
      return air;
    }

    private double at(double[] values, double log) {
      int first = logs.first(log);
      logs.weights(log, first, weights);
      double sum = 0;
      for (int k = 0; k < Axis.NEIGHBOURS; k++) {
        sum += weights[k] * values[first + k];
      }
      return sum;
    }

    /** The logarithm of the speed at which a rising number is reached; infinite where none is. */
    private double where(double[] values, double wanted) {
      if (values[0] > wanted) {
        return Double.NEGATIVE_INFINITY;
      }
      int above = 1;
      while (above < SPEEDS && values[above] <= wanted) {
        above++;
      }
      if (above == SPEEDS) {
        return Double.POSITIVE_INFINITY;
      }
      double low = logs.point(above - 1);
      double high = logs.point(above);
      for (int halving = 0; halving < HALVINGS; halving++) {
        double middle = (low + high) / 2;
        if (at(values, middle) < wanted) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return (low + high) / 2;
    }
  }

  private static double range(ShotTrial trial, Shot shot) {
    return Math.hypot(trial.landX() - shot.contact().x(), trial.landY() - shot.contact().y());
  }

  /** Takes what does not clear the net out of the densities, in part where it is on the edge. */
  private void weighByNet(double[][] airs) {
    for (int j = 0; j < elevations.length; j++) {
      double[] before = airs[Math.max(0, j - 1)];
      double[] after = airs[Math.min(elevations.length - 1, j + 1)];
      for (int i = 0; i < distances.length; i++) {
        double change = Math.max(1e-9, Math.abs(after[i] - before[i]) / 2);
        densities[j][i] *= Math.max(0, Math.min(1, 0.5 + airs[j][i] / change));
      }
    }
  }

  /** The most likely scatter and its tenths. */
  Likely likely() {
    double[] best = new double[SHARES];
    double[] logSums = new double[SHARES];
    double unitAim = start.effect() / Math.sqrt(distances.length);
    double lowest = -AIM_REACH - (inTheNet > 0 ? Math.sqrt(distances.length) : 0);
    for (int s = 0; s < SHARES; s++) {
      Sum sum = new Sum();
      for (double t = lowest; t <= AIM_REACH; t += AIM_STEP) {
        double speed = start.aim().speed() * Math.exp(t * unitAim * shares[s]);
        sum.add(logLikelihood(speed, shares[s]));
      }
      best[s] = sum.largest;
      // Steps of speed are as long as the scatter is large.
      logSums[s] = sum.log() + Math.log(shares[s]);
    }
    return new Likely(top(best), tenth(logSums, TENTH), tenth(logSums, 1 - TENTH));
  }

  /** A sum of numbers that are known by their logarithms. */
  private static final class Sum {
    private double largest = Double.NEGATIVE_INFINITY;
    private double scaled;

    void add(double log) {
      if (log > largest) {
        scaled = scaled * Math.exp(largest - log) + 1;
        largest = log;
      } else if (log > Double.NEGATIVE_INFINITY) {
        scaled += Math.exp(log - largest);
      }
    }

    double log() {
      return largest + Math.log(scaled);
    }
  }

  double logLikelihood(double speed, double share) {
    double up = share * start.unit().elevation();
    double fast = share * start.unit().speed() * speed;
    double[] sums = new double[distances.length];
    double net = 0;
    for (int j = 0; j < elevations.length; j++) {
      double z = (elevations[j] - start.aim().elevation()) / up;
      if (Math.abs(z) < ELEVATION_REACH) {
        double weight = elevationStep / up * StandardNormal.density(z);
        if (inTheNet > 0) {
          net += weight * StandardNormal.below((clearing[j] - speed) / fast);
        }
        for (int i = 0; i < sums.length; i++) {
          double off = (speeds[j][i] - speed) / fast;
          sums[i] += weight * densities[j][i] * Math.exp(-off * off / 2);
        }
      }
    }
    double log = inTheNet > 0 ? inTheNet * Math.log(net) : 0;
    for (double sum : sums) {
      log += Math.log(sum / fast);
    }
    return log;
  }

  /** The share at the top of a profile, between its points by a parabola. */
  private double top(double[] heights) {
    int top = 0;
    for (int s = 1; s < SHARES; s++) {
      top = heights[s] > heights[top] ? s : top;
    }
    if (top == 0 || top == SHARES - 1) {
      return shares[top];
    }
    double down = heights[top - 1] - heights[top];
    double up = heights[top + 1] - heights[top];
    double shift = (down - up) / (2 * (down + up));
    return shares[top] * Math.pow(shares[1] / shares[0], shift);
  }

  /** The share below which so much of what is likely lies. */
  private double tenth(double[] logs, double wanted) {
    Sum all = new Sum();
    for (double log : logs) {
      all.add(log);
    }
    double below = 0;
    for (int s = 0; s < SHARES; s++) {
      double here = Math.exp(logs[s] - all.log());
      if (below + here >= wanted) {
        double within = (wanted - below) / here - 0.5;
        return shares[s] * Math.pow(shares[1] / shares[0], within);
      }
      below += here;
    }
    return shares[SHARES - 1];
  }
}
