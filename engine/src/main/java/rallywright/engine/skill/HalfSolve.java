package rallywright.engine.skill;

import java.util.Map;
import java.util.TreeMap;

/** Half of a solve with a sum: the covariance of two sums is the product of their halves. */
final class HalfSolve {
  private final Map<Integer, double[]> byGroup = new TreeMap<>();
  private final double[] border;
  private final double[] solvedBorder;

  private HalfSolve(Map<Integer, SparseRow> rows, Curvature curvature, int size) {
    border = new double[size];
    rows.forEach(
        (group, row) -> {
          BlockCholesky factor = curvature.factor(group);
          double[] half = factor.half(row.dense(factor.plan().graph().latents()));
          int own = half.length - size;
          for (int i = 0; i < size; i++) {
            border[i] += half[own + i];
            half[own + i] = 0;
          }
          byGroup.put(group, half);
        });
    solvedBorder = curvature.border().solve(border);
  }

  static HalfSolve of(Map<Integer, SparseRow> rows, Curvature curvature) {
    return new HalfSolve(rows, curvature, curvature.border().size());
  }

  double dot(HalfSolve other) {
    double sum = Point.dot(border, other.solvedBorder);
    for (Map.Entry<Integer, double[]> entry : byGroup.entrySet()) {
      double[] half = other.byGroup.get(entry.getKey());
      if (half != null) {
        sum += Point.dot(entry.getValue(), half);
      }
    }
    return sum;
  }
}
