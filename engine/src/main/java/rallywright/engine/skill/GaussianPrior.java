package rallywright.engine.skill;

/** A prior that is given by its sparse precision (the inverse of its covariance). */
final class GaussianPrior implements Prior {
  private final double[] mean;
  private final BlockMatrix precision;
  private final double logDet;

  /**
   * A prior of which the log determinant is known.
   *
   * @param logDet log det of the precision
   */
  GaussianPrior(double[] mean, BlockMatrix precision, double logDet) {
    this.mean = mean.clone();
    this.precision = precision;
    this.logDet = logDet;
  }

  @Override
  public BlockGraph graph() {
    return precision.graph();
  }

  @Override
  public int[] owners() {
    return new int[mean.length];
  }

  @Override
  public double[] mean() {
    return mean.clone();
  }

  @Override
  public void addPrecision(BlockMatrix matrix) {
    matrix.addAll(precision);
  }

  @Override
  public void addProduct(double[] vector, double[] product) {
    double[] own = precision.times(vector);
    for (int i = 0; i < own.length; i++) {
      product[i] += own[i];
    }
  }

  /** A prior whose log determinant is found by factoring it. */
  static GaussianPrior of(double[] mean, BlockMatrix precision) {
    double logDet =
        BlockCholesky.of(precision, new EliminationPlan(precision.graph()))
            .orElseThrow(() -> new IllegalArgumentException("The prior must have a density."))
            .logDet();
    return new GaussianPrior(mean, precision, logDet);
  }

  @Override
  public double logDensity(double[] x, double[] gradient) {
    double[] away = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      away[i] = x[i] - mean[i];
    }
    double[] pull = precision.times(away);
    double square = 0;
    for (int i = 0; i < x.length; i++) {
      square += away[i] * pull[i];
      gradient[i] -= pull[i];
    }
    return logDet / 2 - square / 2;
  }
}
