package rallywright.engine.skill;

import java.util.Optional;

/**
 * A small symmetric positive definite matrix, of any size from 0: one node of the same
 * factorisation.
 */
final class Dense {
  private final int size;
  private final Optional<BlockCholesky> factor;

  private Dense(int size, Optional<BlockCholesky> factor) {
    this.size = size;
    this.factor = factor;
  }

  static Dense of(double[][] values) {
    return tried(values).orElseThrow(() -> new IllegalArgumentException("Not positive definite."));
  }

  /** The matrix, or empty where it is not positive definite. */
  static Optional<Dense> tried(double[][] values) {
    if (values.length == 0) {
      return Optional.of(new Dense(0, Optional.empty()));
    }
    BlockMatrix matrix = new BlockMatrix(new BlockGraph(new int[] {values.length}));
    for (int i = 0; i < values.length; i++) {
      for (int j = i; j < values.length; j++) {
        matrix.add(i, j, values[i][j]);
      }
    }
    return BlockCholesky.of(matrix, new EliminationPlan(matrix.graph()))
        .map(factor -> new Dense(values.length, Optional.of(factor)));
  }

  int size() {
    return size;
  }

  double logDet() {
    return factor.map(BlockCholesky::logDet).orElse(0.0);
  }

  double[] solve(double[] right) {
    return factor.map(each -> each.solve(right)).orElse(right);
  }

  /** The full symmetric inverse. */
  double[][] inverse() {
    double[][] inverse = new double[size][];
    for (int i = 0; i < size; i++) {
      double[] unit = new double[size];
      unit[i] = 1;
      inverse[i] = solve(unit);
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
