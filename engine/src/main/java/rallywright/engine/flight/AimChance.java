package rallywright.engine.flight;

import rallywright.engine.quantity.StandardNormal;

/**
 * The chance that a shot succeeds when it is aimed somewhere and the launches scatter: the scatter
 * integrated over the region of success, without a lottery.
 *
 * <p><b>Card.</b> In: a shot, an aim, a player's scatter. Out: the chance of success. Valid:
 * scatter of some in 100 of speed and some degrees. Limits: spreads are independent and normal;
 * ball and wind are as given. Checked against a million simulated flights.
 *
 * <p>For the maintainer: for one elevation and bearing the speeds that succeed are found between
 * points, and their normal chance is exact; that chance is smooth in elevation and mostly in
 * bearing, over which a rule of even steps is as good as any. The other way round, with jumps under
 * that rule, a search was off by three in a hundred. Where all speeds leave by a side line at about
 * one bearing there is a jump over the bearings; so each elevation has its bearings shifted by
 * another part of a step, and the errors of the rows cancel: with the same bearings for all, deep
 * serves were off by up to 0.004.
 */
final class AimChance {

  /** How far the scatter is followed: beyond lie 7 launches in a million a side. */
  private static final double SPREADS = 4.35;

  private static final int EDGE_STEPS = 3;

  /** The golden section: its multiples, without whole parts, lie as evenly as can be. */
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private final LaunchGrid grid;
  private final Scatter scatter;
  private final Fineness fineness;
  private final int speeds;

  /** An integration that looks so many times finer along the speed than its fineness says. */
  AimChance(LaunchGrid grid, Scatter scatter, Fineness fineness, int finer) {
    speeds = (fineness.speeds - 1) * finer;
    this.grid = grid;
    this.scatter = scatter;
    this.fineness = fineness;
  }

  /** How finely to integrate. */
  enum Fineness {
    /** To see roughly where the best aims are. */
    ROUGH(7, 7, 11, 3.4),
    /** To climb to the best aim. */
    SEARCH(12, 12, 17, 3.9),
    /** To say its chance. */
    FINE(33, 25, 49, SPREADS);

    private final int elevations;
    private final int bearings;
    private final int speeds;

    /** How far the scatter is followed. */
    private final double spreads;

    Fineness(int elevations, int bearings, int speeds, double spreads) {
      this.elevations = elevations;
      this.bearings = bearings;
      this.speeds = speeds;
      this.spreads = spreads;
    }
  }

  /** The launches that an aim may become. */
  static LaunchGrid.Span span(LaunchBox aims, double right, double left, Scatter scatter) {
    double up = SPREADS * scatter.elevation();
    double side = SPREADS * scatter.bearing();
    double slow = Math.max(0.3, aims.slowest() * (1 - SPREADS * scatter.speed()));
    double limit = Math.toRadians(89);
    LaunchBox box =
        new LaunchBox(
            slow,
            aims.fastest() * (1 + SPREADS * scatter.speed()),
            Math.max(-limit, aims.lowest() - up),
            Math.min(limit, aims.highest() + up));
    return new LaunchGrid.Span(box, right - side, left + side);
  }

  double of(LaunchAim aim) {
    double step = 2 * fineness.spreads / fineness.elevations;
    double sum = 0;
    double weights = 0;
    for (int j = 0; j < fineness.elevations; j++) {
      double z = -fineness.spreads + (j + 0.5) * step;
      double weight = Math.exp(-z * z / 2);
      weights += weight;
      grid.elevation(aim.elevation() + scatter.elevation() * z);
      sum += weight * overBearings(aim, j * GOLDEN % 1);
    }
    return sum / weights;
  }

  private double overBearings(LaunchAim aim, double first) {
    double step = 2 * fineness.spreads / fineness.bearings;
    double sum = 0;
    double weights = 0;
    for (int k = 0; k < fineness.bearings; k++) {
      double z = -fineness.spreads + (k + first) * step;
      double weight = Math.exp(-z * z / 2);
      weights += weight;
      grid.bearing(aim.bearing() + scatter.bearing() * z);
      sum += weight * overSpeeds(aim.speed());
    }
    return sum / weights;
  }

  private double overSpeeds(double speed) {
    double step = 2 * fineness.spreads / speeds;
    double sum = 0;
    double lastZ = -fineness.spreads;
    double last = margin(speed, lastZ);
    for (int i = 1; i <= speeds; i++) {
      double z = -fineness.spreads + i * step;
      double next = margin(speed, z);
      if (last > 0 != next > 0) {
        double edge = edge(speed, lastZ, last, step, next);
        sum += (last > 0 ? 1 : -1) * StandardNormal.below(edge);
      }
      last = next;
      lastZ = z;
    }
    return sum + (last > 0 ? StandardNormal.below(fineness.spreads) : 0) - startsIn(speed);
  }

  /** What lies below the lowest speed, where that succeeds already. */
  private double startsIn(double speed) {
    return margin(speed, -fineness.spreads) > 0 ? StandardNormal.below(-fineness.spreads) : 0;
  }

  private double margin(double speed, double z) {
    return grid.margin(speed * (1 + scatter.speed() * z));
  }

  /**
   * Where success begins or ends between two speeds, in spreads: false position, where an end that
   * stays counts half the next time (the Illinois method), for margins have kinks.
   */
  private double edge(double speed, double from, double first, double step, double second) {
    double low = from;
    double high = from + step;
    double below = first;
    double above = second;
    for (int i = 0; i < EDGE_STEPS; i++) {
      double at = low + (high - low) * below / (below - above);
      double found = margin(speed, at);
      if (found > 0 == below > 0) {
        low = at;
        below = found;
        above /= 2;
      } else {
        high = at;
        above = found;
        below /= 2;
      }
    }
    return low + (high - low) * below / (below - above);
  }
}
