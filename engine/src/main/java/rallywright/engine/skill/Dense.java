package rallywright.engine.skill;

/** A small symmetric positive definite matrix: one node of the same factorisation. */
final class Dense {
  private final int size;
  private final BlockCholesky factor;

  private Dense(int size, BlockCholesky factor) {
    this.size = size;
    this.factor = factor;
  }

  static Dense of(double[][] values) {
    BlockMatrix matrix = new BlockMatrix(new BlockGraph(new int[] {values.length}));
    for (int i = 0; i < values.length; i++) {
      for (int j = i; j < values.length; j++) {
        matrix.add(i, j, values[i][j]);
      }
    }
    BlockCholesky factor =
        BlockCholesky.of(matrix, new EliminationPlan(matrix.graph()))
            .orElseThrow(() -> new IllegalArgumentException("Not positive definite."));
    return new Dense(values.length, factor);
  }

  double logDet() {
    return factor.logDet();
  }

  /** The full symmetric inverse. */
  double[][] inverse() {
    double[][] inverse = new double[size][];
    for (int i = 0; i < size; i++) {
      double[] unit = new double[size];
      unit[i] = 1;
      inverse[i] = factor.solve(unit);
    }
    return inverse;
  }

  /** A diagonal matrix with one value. */
  static double[][] diagonal(int size, double value) {
    double[][] matrix = new double[size][size];
    for (int i = 0; i < size; i++) {
      matrix[i][i] = value;
    }
    return matrix;
  }
}
