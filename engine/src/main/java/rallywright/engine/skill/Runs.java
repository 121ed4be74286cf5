package rallywright.engine.skill;

/**
 * Inner loops over runs of consecutive numbers. They read one array and write another, and do
 * nothing else: in that form the virtual machine turns them into vector instructions.
 */
final class Runs {
  private Runs() {}

  /**
   * to[i] −= x0·from[i] + … + x3·from[i], over i in [begin, end), for four rows of {@code from}.
   *
   * @param layout where the first row starts, the distance of the rows, begin, end
   */
  static void subtractFour(double[] to, int toStart, double[] from, int[] layout, double[] x) {
    int row0 = layout[0];
    int row1 = row0 + layout[1];
    int row2 = row1 + layout[1];
    int row3 = row2 + layout[1];
    double x0 = x[0];
    double x1 = x[1];
    double x2 = x[2];
    double x3 = x[3];
    int end = layout[3];
    for (int i = layout[2]; i < end; i++) {
      to[toStart + i] -=
          x0 * from[row0 + i] + x1 * from[row1 + i] + x2 * from[row2 + i] + x3 * from[row3 + i];
    }
  }

  /**
   * to[i] −= x·from[i], over i in [begin, end).
   *
   * @param layout where the row starts, begin, end
   */
  static void subtract(double[] to, int toStart, double[] from, int[] layout, double x) {
    int row = layout[0];
    int end = layout[2];
    for (int i = layout[1]; i < end; i++) {
      to[toStart + i] -= x * from[row + i];
    }
  }
}
