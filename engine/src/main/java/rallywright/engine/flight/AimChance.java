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
 * <p>For the maintainer: over speed and elevation by the midpoint rule; over bearing the edges of
 * success are found between points and the normal chance between them is exact.
 */
final class AimChance {

  /** How far the scatter is followed: beyond lie 7 launches in a million a side. */
  private static final double SPREADS = 4.35;

  private final LaunchGrid grid;
  private final Scatter scatter;
  private final int nodes;
  private final int bearingNodes;

  AimChance(LaunchGrid grid, Scatter scatter, Fineness fineness) {
    this.grid = grid;
    this.scatter = scatter;
    nodes = fineness.nodes;
    bearingNodes = fineness.bearingNodes;
  }

  /** How finely to integrate. */
  enum Fineness {
    /** To find where the best aims are. */
    SEARCH(21, 13),
    /** To say its chance. */
    FINE(81, 33);

    private final int nodes;
    private final int bearingNodes;

    Fineness(int nodes, int bearingNodes) {
      this.nodes = nodes;
      this.bearingNodes = bearingNodes;
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
    double step = 2 * SPREADS / nodes;
    double sum = 0;
    double weights = 0;
    for (int i = 0; i < nodes; i++) {
      double z = -SPREADS + (i + 0.5) * step;
      double weight = Math.exp(-z * z / 2);
      weights += weight;
      grid.speed(aim.speed() * (1 + scatter.speed() * z));
      sum += weight * overElevations(aim, step);
    }
    return sum / weights;
  }

  private double overElevations(LaunchAim aim, double step) {
    double sum = 0;
    double weights = 0;
    for (int j = 0; j < nodes; j++) {
      double z = -SPREADS + (j + 0.5) * step;
      double weight = Math.exp(-z * z / 2);
      weights += weight;
      grid.elevation(aim.elevation() + scatter.elevation() * z);
      sum += weight * overBearings(aim.bearing());
    }
    return sum / weights;
  }

  /** Between points the margin is taken as straight: its zero is the edge of success. */
  private double overBearings(double bearing) {
    double step = 2 * SPREADS / (bearingNodes - 1);
    double sum = 0;
    double lastZ = -SPREADS;
    double last = grid.margin(bearing - SPREADS * scatter.bearing());
    for (int k = 1; k < bearingNodes; k++) {
      double z = -SPREADS + k * step;
      double next = grid.margin(bearing + scatter.bearing() * z);
      if (last > 0 || next > 0) {
        double zero = last == next ? z : lastZ + (z - lastZ) * last / (last - next);
        double from = last > 0 ? lastZ : zero;
        double to = next > 0 ? z : zero;
        sum += StandardNormal.below(to) - StandardNormal.below(from);
      }
      last = next;
      lastZ = z;
    }
    return sum;
  }
}
