package rallywright.engine.skill;

/** The evidence of one group around a point, as its factor and product need it. */
final class Curves {
  private final double value;
  private final double[] bends;
  private final Likelihood.Curve[] others;

  /**
   * Gathers what was found.
   *
   * @param value log posterior of the group without the 2π of the prior
   * @param bends minus the second derivative of each of the {@link Binomials}
   * @param others the curve of each other piece of evidence
   */
  Curves(double value, double[] bends, Likelihood.Curve[] others) {
    this.value = value;
    this.bends = bends;
    this.others = others;
  }

  double value() {
    return value;
  }

  double[] bends() {
    return bends;
  }

  Likelihood.Curve[] others() {
    return others;
  }
}
