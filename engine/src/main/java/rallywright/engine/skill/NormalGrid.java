package rallywright.engine.skill;

/**
 * Points and weights that turn an integral over a standard normal variable into a sum (Gauss and
 * Hermite): exact for polynomials of degree below twice the number of points.
 *
 * <p>Method: the points are the roots of the orthonormal Hermite polynomial h_n, found where it
 * changes sign and narrowed by halving; the weights are 1/(n h_{n−1}²). Reference: Abramowitz and
 * Stegun, Handbook of Mathematical Functions (1964), 25.4.46, for the weight e^(−x²/2).
 */
final class NormalGrid {
  private static final double SCAN = 1e-3;

  private final double[] points;
  private final double[] weights;

  private NormalGrid(int count) {
    points = new double[count];
    weights = new double[count];
    int found = 0;
    double end = 2 * Math.sqrt(count) + 1;
    for (double x = -end; found < count; x += SCAN) {
      if (hermite(count, x)[1] * hermite(count, x + SCAN)[1] <= 0) {
        points[found] = root(count, x);
        double before = hermite(count, points[found])[0];
        weights[found] = 1 / (count * before * before);
        found++;
      }
    }
  }

  /** A grid of so many points. */
  static NormalGrid of(int count) {
    return new NormalGrid(count);
  }

  private static double root(int count, double left) {
    double low = left;
    double high = left + SCAN;
    double sign = hermite(count, low)[1];
    for (int halving = 0; halving < 60; halving++) {
      double middle = (low + high) / 2;
      if (hermite(count, middle)[1] * sign > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** h_{n−1}(x) and h_n(x). */
  private static double[] hermite(int n, double x) {
    double before = 0;
    double now = 1;
    for (int k = 0; k < n; k++) {
      double next = (x * now - Math.sqrt(k) * before) / Math.sqrt(k + 1);
      before = now;
      now = next;
    }
    return new double[] {before, now};
  }

  int count() {
    return points.length;
  }

  double point(int i) {
    return points[i];
  }

  double weight(int i) {
    return weights[i];
  }
}
