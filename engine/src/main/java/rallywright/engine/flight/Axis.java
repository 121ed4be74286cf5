package rallywright.engine.flight;

/**
 * Evenly spaced points of an interval and cubic interpolation between the four nearest ones, as
 * Lagrange's formula gives it.
 *
 * <p>For the maintainer: four neighbours only, because flights far from the shot (balls that never
 * get to the net) must not reach into its neighbourhood.
 */
final class Axis {

  /** How many neighbours count. */
  static final int NEIGHBOURS = 4;

  private final int count;
  private final double from;
  private final double step;

  Axis(int count, double from, double to) {
    this.count = count;
    this.from = from;
    step = (to - from) / (count - 1);
  }

  double point(int i) {
    return from + i * step;
  }

  /** The first of the four points that count at x. */
  int first(double x) {
    int cell = (int) Math.floor((x - from) / step);
    return Math.min(count - NEIGHBOURS, Math.max(0, cell - 1));
  }

  /** The weights of the four points from the given one on. */
  void weights(double x, int first, double[] into) {
    double t = (x - from) / step - first;
    into[0] = -(t - 1) * (t - 2) * (t - 3) / 6;
    into[1] = t * (t - 2) * (t - 3) / 2;
    into[2] = -t * (t - 1) * (t - 3) / 2;
    into[3] = t * (t - 1) * (t - 2) / 6;
  }
}
