package rallywright.engine.skill;

import java.util.Arrays;

/**
 * A vector over all latents: those of each group, and those of the border. In a direction the
 * values of groups at rest are left out: they count as 0.
 */
final class Point {
  private static final double[] LEFT_OUT = {};

  private final double[][] own;
  private final double[] border;

  Point(double[][] own, double[] border) {
    this.own = own;
    this.border = border;
  }

  static Point zeroLike(Point other) {
    double[][] own = new double[other.own.length][];
    for (int part = 0; part < own.length; part++) {
      own[part] = new double[other.own[part].length];
    }
    return new Point(own, new double[other.border.length]);
  }

  /** A vector of zeros in which the groups at rest are left out. */
  static Point zeroFor(Assembly assembly, Point like) {
    double[][] own = new double[like.own.length][];
    for (int part = 0; part < own.length; part++) {
      own[part] = assembly.rests(part) ? LEFT_OUT : new double[like.own[part].length];
    }
    return new Point(own, new double[like.border.length]);
  }

  int latents() {
    return Arrays.stream(own).mapToInt(values -> values.length).sum() + border.length;
  }

  /** The values of a group; not a copy. */
  double[] own(int part) {
    return own[part];
  }

  /** The values of the border; not a copy. */
  double[] border() {
    return border;
  }

  /** A copy of the values of a group, those of the border behind them. */
  double[] local(int part) {
    double[] local = Arrays.copyOf(own[part], own[part].length + border.length);
    System.arraycopy(border, 0, local, own[part].length, border.length);
    return local;
  }

  /** Adds what stands in a vector over a group and the border. */
  void addLocal(int part, double[] local) {
    for (int i = 0; i < own[part].length; i++) {
      own[part][i] += local[i];
    }
    for (int i = 0; i < border.length; i++) {
      border[i] += local[own[part].length + i];
    }
  }

  /** This plus factor times another. */
  Point plus(double factor, Point other) {
    double[][] sums = new double[own.length][];
    for (int part = 0; part < own.length; part++) {
      sums[part] =
          other.own[part].length == 0 ? own[part] : plus(own[part], factor, other.own[part]);
    }
    return new Point(sums, plus(border, factor, other.border));
  }

  private static double[] plus(double[] x, double factor, double[] y) {
    double[] sum = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      sum[i] = x[i] + factor * y[i];
    }
    return sum;
  }

  double dot(Point other) {
    double sum = dot(border, other.border);
    for (int part = 0; part < own.length; part++) {
      if (other.own[part].length > 0) {
        sum += dot(own[part], other.own[part]);
      }
    }
    return sum;
  }

  static double dot(double[] x, double[] y) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += x[i] * y[i];
    }
    return sum;
  }
}
