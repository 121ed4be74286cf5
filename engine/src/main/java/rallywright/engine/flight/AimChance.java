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
 * points, and their normal chance is exact; that chance is smooth in elevation and bearing, over
 * which the midpoint rule is as good as any. The other way round, with jumps under the midpoint
 * rule, a search was off by three in a hundred.
 */
final class AimChance {

  /** How far the scatter is followed: beyond lie 7 launches in a million a side. */
  private static final double SPREADS = 4.35;

  private static final int HALVINGS = 7;

  private final LaunchGrid grid;
  private final Scatter scatter;
  private final Fineness fineness;

  AimChance(LaunchGrid grid, Scatter scatter, Fineness fineness) {
    this.grid = grid;
    this.scatter = scatter;
    this.fineness = fineness;
  }

  /** How finely to integrate. */
  enum Fineness {
    /** To see roughly where the best aims are. */
    ROUGH(9, 5, 17),
    /** To climb to the best aim. */
    SEARCH(13, 8, 19),
    /** To say its chance. */
    FINE(49, 25, 49);

    private final int elevations;
    private final int bearings;
    private final int speeds;

    Fineness(int elevations, int bearings, int speeds) {
      this.elevations = elevations;
      this.bearings = bearings;
      this.speeds = speeds;
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
    double step = 2 * SPREADS / fineness.elevations;
    double sum = 0;
    double weights = 0;
    for (int j = 0; j < fineness.elevations; j++) {
      double z = -SPREADS + (j + 0.5) * step;
      double weight = Math.exp(-z * z / 2);
      weights += weight;
      grid.elevation(aim.elevation() + scatter.elevation() * z);
      sum += weight * overBearings(aim);
    }
    return sum / weights;
  }

  private double overBearings(LaunchAim aim) {
    double step = 2 * SPREADS / fineness.bearings;
    double sum = 0;
    double weights = 0;
    for (int k = 0; k < fineness.bearings; k++) {
      double z = -SPREADS + (k + 0.5) * step;
      double weight = Math.exp(-z * z / 2);
      weights += weight;
      grid.bearing(aim.bearing() + scatter.bearing() * z);
      sum += weight * overSpeeds(aim.speed());
    }
    return sum / weights;
  }

  private double overSpeeds(double speed) {
    double step = 2 * SPREADS / (fineness.speeds - 1);
    double sum = 0;
    double lastZ = -SPREADS;
    double last = margin(speed, lastZ);
    for (int i = 1; i < fineness.speeds; i++) {
      double z = -SPREADS + i * step;
      double next = margin(speed, z);
      if (last > 0 != next > 0) {
        double edge = edge(speed, lastZ, z, last);
        sum += (last > 0 ? 1 : -1) * StandardNormal.below(edge);
      }
      last = next;
      lastZ = z;
    }
    return sum + (last > 0 ? StandardNormal.below(SPREADS) : 0) - startsIn(speed);
  }

  /** What lies below the lowest speed, where that succeeds already. */
  private double startsIn(double speed) {
    return margin(speed, -SPREADS) > 0 ? StandardNormal.below(-SPREADS) : 0;
  }

  private double margin(double speed, double z) {
    return grid.margin(speed * (1 + scatter.speed() * z));
  }

  /**
   * Where success begins or ends between two speeds, in spreads: margins have kinks, so halving.
   */
  private double edge(double speed, double from, double to, double last) {
    double low = from;
    double high = to;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      if (margin(speed, middle) > 0 == last > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
