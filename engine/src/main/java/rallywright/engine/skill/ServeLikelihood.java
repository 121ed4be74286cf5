package rallywright.engine.skill;

/**
 * Rallies by who served them: two independent binomials, one for each predictor (the logit that the
 * server's side wins when A serves, and when B serves).
 *
 * @param whenA the rallies that A served
 * @param whenB the rallies that B served
 */
record ServeLikelihood(BinomialLikelihood whenA, BinomialLikelihood whenB) implements Likelihood {
  static ServeLikelihood of(RalliesByServer rallies) {
    return new ServeLikelihood(
        new BinomialLikelihood(
            rallies.aServedAndWon(), rallies.aServed() - rallies.aServedAndWon()),
        new BinomialLikelihood(
            rallies.bServedAndWon(), rallies.bServed() - rallies.bServedAndWon()));
  }

  @Override
  public int predictors() {
    return 2;
  }

  @Override
  public Curve at(double eta, double etaOther) {
    Curve a = whenA.at(eta, eta);
    Curve b = whenB.at(etaOther, etaOther);
    return new Curve(a.value() + b.value(), a.d1(), b.d1(), a.d11(), 0, b.d11());
  }
}
