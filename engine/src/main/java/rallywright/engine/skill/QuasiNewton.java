package rallywright.engine.skill;

/**
 * Finds the top of a smooth function of a few numbers by the method of Broyden, Fletcher, Goldfarb
 * and Shanno (BFGS), with steps halved until they rise enough. Reference: Nocedal and Wright,
 * Numerical Optimization (2006), chapter 6.
 */
final class QuasiNewton {
  private static final double ARMIJO = 1e-4;
  private static final double SHORTEST = 1e-6;

  /** The first step moves no number by more than this. */
  private static final double FIRST_STEP = 0.3;

  private final Function function;
  private final int mostSteps;
  private final double flat;

  /** A smooth function. */
  interface Function {
    /** The value at x; the gradient is written to {@code gradient}. */
    double at(double[] x, double[] gradient);
  }

  /**
   * A search.
   *
   * @param flat a slope, as expected rise of the value, below which the top is reached
   */
  QuasiNewton(Function function, int mostSteps, double flat) {
    this.function = function;
    this.mostSteps = mostSteps;
    this.flat = flat;
  }

  /** The top, sought from a start. */
  double[] topFrom(double[] start) {
    int size = start.length;
    double[] x = start.clone();
    double[] gradient = new double[size];
    double value = function.at(x, gradient);
    double[][] inverse = Dense.diagonal(size, FIRST_STEP / (FIRST_STEP + largest(gradient)));
    for (int step = 0; step < mostSteps; step++) {
      double[] direction = times(inverse, gradient);
      double slope = Point.dot(direction, gradient);
      if (!(slope > flat)) {
        return x;
      }
      double[] nextGradient = new double[size];
      double scale = 1;
      double[] next = along(x, scale, direction);
      double nextValue = function.at(next, nextGradient);
      while (!(nextValue >= value + ARMIJO * scale * slope)) {
        scale /= 2;
        if (scale < SHORTEST) {
          return x;
        }
        next = along(x, scale, direction);
        nextValue = function.at(next, nextGradient);
      }
      update(inverse, difference(next, x), difference(gradient, nextGradient));
      x = next;
      value = nextValue;
      gradient = nextGradient;
    }
    return x;
  }

  private static double largest(double[] values) {
    double largest = 0;
    for (double each : values) {
      largest = Math.max(largest, Math.abs(each));
    }
    return largest;
  }

  private static double[] along(double[] x, double scale, double[] direction) {
    double[] there = x.clone();
    for (int i = 0; i < x.length; i++) {
      there[i] += scale * direction[i];
    }
    return there;
  }

  private static double[] difference(double[] x, double[] y) {
    return along(x, -1, y);
  }

  private static double[] times(double[][] matrix, double[] x) {
    double[] product = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      product[i] = Point.dot(matrix[i], x);
    }
    return product;
  }

  /**
   * Makes the inverse of minus the Hessian agree with a step and the fall of the slope along it.
   */
  private static void update(double[][] inverse, double[] step, double[] fall) {
    double along = Point.dot(step, fall);
    if (!(along > 0)) {
      return;
    }
    double[] scaled = times(inverse, fall);
    double factor = (1 + Point.dot(fall, scaled) / along) / along;
    for (int i = 0; i < step.length; i++) {
      for (int j = 0; j < step.length; j++) {
        inverse[i][j] +=
            factor * step[i] * step[j] - (scaled[i] * step[j] + step[i] * scaled[j]) / along;
      }
    }
  }
}
