package rallywright.engine.skill;

/** A measurement with a normal error: the Gaussian special case, in which Laplace is exact. */
record NormalLikelihood(double value, double variance) implements Likelihood {
  @Override
  public int predictors() {
    return 1;
  }

  @Override
  public Curve at(double eta, double etaOther) {
    double away = value - eta;
    double log = -Math.log(2 * Math.PI * variance) / 2 - away * away / (2 * variance);
    return new Curve(log, away / variance, 0, -1 / variance, 0, 0);
  }
}
