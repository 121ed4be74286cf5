package rallywright.engine.odds;

import java.util.Arrays;

/** Gaussian elimination with row exchange on a full matrix: plain and slow, for reference. */
public final class DenseSolver {

  private DenseSolver() {}

  /** Solves {@code matrix x = right}; both are left as they are. */
  public static double[] solve(double[][] matrix, double[] right) {
    int size = right.length;
    double[][] rows = new double[size][];
    for (int i = 0; i < size; i++) {
      rows[i] = Arrays.copyOf(matrix[i], size + 1);
      rows[i][size] = right[i];
    }
    for (int k = 0; k < size; k++) {
      exchange(rows, k);
      for (int i = k + 1; i < size; i++) {
        double share = rows[i][k] / rows[k][k];
        if (share != 0) {
          for (int j = k; j <= size; j++) {
            rows[i][j] -= share * rows[k][j];
          }
        }
      }
    }
    double[] x = new double[size];
    for (int i = size - 1; i >= 0; i--) {
      double sum = rows[i][size];
      for (int j = i + 1; j < size; j++) {
        sum -= rows[i][j] * x[j];
      }
      x[i] = sum / rows[i][i];
    }
    return x;
  }

  private static void exchange(double[][] rows, int k) {
    int best = k;
    for (int i = k + 1; i < rows.length; i++) {
      if (Math.abs(rows[i][k]) > Math.abs(rows[best][k])) {
        best = i;
      }
    }
    double[] row = rows[k];
    rows[k] = rows[best];
    rows[best] = row;
  }
}
