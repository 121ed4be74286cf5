package rallywright.engine.skill;

import java.util.Arrays;

/**
 * One piece of evidence in the core: a likelihood whose predictors are sparse sums over latents,
 * η_i = offset_i + Σ weight_i,j · x_j.
 */
final class Term {
  private static final double[] ALL_HERE = {0, 0, 0};

  private final int[] latents;
  private final double[][] weights;
  private final double[] offsets;
  private final Likelihood likelihood;

  /** One row for each predictor of the likelihood. */
  Term(Likelihood likelihood, SparseRow... rows) {
    if (rows.length != likelihood.predictors()) {
      throw new IllegalArgumentException(
          "The evidence has " + rows.length + " rows; it needs " + likelihood.predictors() + ".");
    }
    this.likelihood = likelihood;
    latents = latents(rows);
    weights = new double[rows.length][latents.length];
    offsets = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      offsets[i] = rows[i].offset();
      for (int j = 0; j < latents.length; j++) {
        weights[i][j] = rows[i].weight(latents[j]);
      }
    }
  }

  private static int[] latents(SparseRow[] rows) {
    return rows.length == 1
        ? rows[0].latents()
        : Arrays.stream(rows)
            .flatMapToInt(row -> Arrays.stream(row.latents()))
            .sorted()
            .distinct()
            .toArray();
  }

  /** Ascending. */
  int[] latents() {
    return latents;
  }

  /** The first latent; 0 where it has none. */
  int firstLatent() {
    return latents.length == 0 ? 0 : latents[0];
  }

  double offset(int predictor) {
    return offsets[predictor];
  }

  double[] weights(int predictor) {
    return weights[predictor];
  }

  int predictors() {
    return weights.length;
  }

  Likelihood.Curve at(double[] x) {
    return likelihood.at(eta(0, x), eta(weights.length - 1, x));
  }

  Likelihood likelihood() {
    return likelihood;
  }

  double eta(int predictor, double[] x) {
    double eta = offsets[predictor];
    for (int j = 0; j < latents.length; j++) {
      eta += weights[predictor][j] * x[latents[j]];
    }
    return eta;
  }

  void addGradient(Likelihood.Curve curve, double[] gradient) {
    addRow(0, curve.d1(), gradient);
    if (weights.length == 2) {
      addRow(1, curve.d2(), gradient);
    }
  }

  /** Adds factor times the weights of a predictor to a vector over all latents. */
  void addRow(int predictor, double factor, double[] vector) {
    for (int j = 0; j < latents.length; j++) {
      vector[latents[j]] += factor * weights[predictor][j];
    }
  }

  /**
   * Adds minus the Hessian of the log-likelihood, by the principal directions of the 2 × 2 Hessian;
   * {@link Bend#GUARDED} leaves out the directions in which it bends upward.
   */
  void addPrecision(Likelihood.Curve curve, Bend bend, BlockMatrix matrix) {
    addPrecision(curve, bend, matrix, ALL_HERE);
  }

  /**
   * The same where the predictors hold something more that is not known and not among the latents
   * here, such as the skill of a guest: it makes the evidence less precise.
   *
   * @param outside variance of what is outside the first predictor, covariance, and variance of
   *     what is outside the second
   */
  void addPrecision(Likelihood.Curve curve, Bend bend, BlockMatrix matrix, double[] outside) {
    if (weights.length == 1) {
      addDirection(weakened(bend.of(-curve.d11()), outside[0]), 1, 0, matrix);
      return;
    }
    double mean = -(curve.d11() + curve.d22()) / 2;
    double half = -(curve.d11() - curve.d22()) / 2;
    double radius = Math.hypot(half, curve.d12());
    double angle = radius == 0 ? 0 : Math.atan2(-curve.d12(), half) / 2;
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double along = cos * cos * outside[0] + 2 * cos * sin * outside[1] + sin * sin * outside[2];
    double across = sin * sin * outside[0] - 2 * cos * sin * outside[1] + cos * cos * outside[2];
    addDirection(weakened(bend.of(mean + radius), along), cos, sin, matrix);
    addDirection(weakened(bend.of(mean - radius), across), -sin, cos, matrix);
  }

  private static double weakened(double precision, double outside) {
    return outside == 0 ? precision : precision / (1 + precision * outside);
  }

  /** Adds minus the Hessian, without upward directions, times a vector over the latents. */
  void addProduct(Likelihood.Curve curve, double[] vector, double[] product) {
    double first = dot(0, vector);
    if (weights.length == 1) {
      addRow(0, Math.max(0, -curve.d11()) * first, product);
      return;
    }
    double second = dot(1, vector);
    addRow(0, -curve.d11() * first - curve.d12() * second, product);
    addRow(1, -curve.d12() * first - curve.d22() * second, product);
  }

  private double dot(int predictor, double[] vector) {
    double sum = 0;
    for (int j = 0; j < latents.length; j++) {
      sum += weights[predictor][j] * vector[latents[j]];
    }
    return sum;
  }

  /** Whether directions in which the log-likelihood bends upward count. */
  enum Bend {
    EXACT,
    GUARDED;

    double of(double precision) {
      return this == GUARDED ? Math.max(0, precision) : precision;
    }
  }

  private void addDirection(double precision, double first, double second, BlockMatrix matrix) {
    double[] direction = new double[latents.length];
    for (int j = 0; j < latents.length; j++) {
      direction[j] = first * weights[0][j] + second * weights[weights.length - 1][j];
    }
    matrix.addOuter(latents, direction, precision);
  }
}
