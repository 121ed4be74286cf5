package rallywright.engine.skill;

/**
 * Inner loops over runs of consecutive numbers. Each run is an array of its own and all are read at
 * the same places: in that form the virtual machine turns them into vector instructions.
 */
final class Runs {
  /** So many runs are taken together where there are as many. */
  static final int TOGETHER = 4;

  private Runs() {}

  /**
   * to[i] −= x₀·from[first][i] + … + x₃·from[first + 3][i], from i = begin on.
   *
   * @param x the four factors
   */
  static void subtractFour(double[] to, int begin, double[][] from, int first, double[] x) {
    double[] row0 = from[first];
    double[] row1 = from[first + 1];
    double[] row2 = from[first + 2];
    double[] row3 = from[first + 3];
    double x0 = x[0];
    double x1 = x[1];
    double x2 = x[2];
    double x3 = x[3];
    for (int i = begin; i < to.length; i++) {
      to[i] -= x0 * row0[i] + x1 * row1[i] + x2 * row2[i] + x3 * row3[i];
    }
  }

  /** to[i] −= x·from[i], from i = begin on. */
  static void subtract(double[] to, int begin, double[] from, double x) {
    for (int i = begin; i < to.length; i++) {
      to[i] -= x * from[i];
    }
  }

  /** Σ x[i]·y[i], from i = begin to the end of x, in four sums that do not wait for each other. */
  static double dot(double[] x, double[] y, int begin) {
    double sum0 = 0;
    double sum1 = 0;
    double sum2 = 0;
    double sum3 = 0;
    int i = begin;
    for (; i + 3 < x.length; i += 4) {
      sum0 += x[i] * y[i];
      sum1 += x[i + 1] * y[i + 1];
      sum2 += x[i + 2] * y[i + 2];
      sum3 += x[i + 3] * y[i + 3];
    }
    for (; i < x.length; i++) {
      sum0 += x[i] * y[i];
    }
    return sum0 + sum1 + (sum2 + sum3);
  }
}
