package rallywright.engine.skill;

/**
 * Solves with the whole Hessian, also of evidence that spans groups, starting from the factor that
 * takes it cut. Reference: Hestenes and Stiefel, Methods of conjugate gradients for solving linear
 * systems, J. Research NBS 49 (1952).
 */
final class ConjugateGradient {
  /** A hundredth of the step is left to the next Newton step. */
  private static final double TOLERANCE = 1e-2;

  private static final int MOST_ROUNDS = 60;

  private ConjugateGradient() {}

  static Point solve(Curvature curvature, Point right) {
    Point residual = right;
    Point scaled = curvature.solve(residual);
    Point direction = scaled;
    Point solution = Point.zeroLike(right);
    double size = residual.dot(scaled);
    double enough = size * TOLERANCE * TOLERANCE;
    for (int round = 0; round < MOST_ROUNDS && size > enough; round++) {
      Point product = curvature.product(direction);
      double bend = direction.dot(product);
      if (!(bend > 0)) {
        return round == 0 ? scaled : solution;
      }
      double length = size / bend;
      solution = solution.plus(length, direction);
      residual = residual.plus(-length, product);
      scaled = curvature.solve(residual);
      double next = residual.dot(scaled);
      direction = scaled.plus(next / size, direction);
      size = next;
    }
    return solution;
  }
}
