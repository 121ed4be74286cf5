package rallywright.engine.skill;

/** The log posterior of a system around a point, from one pass over the evidence. */
final class Evaluation {
  private final Point at;
  private final double value;
  private final Point gradient;
  private final Curves[] curves;
  private final Likelihood.Curve[] cross;

  /**
   * Gathers what was found.
   *
   * @param value log posterior without the 2π of the prior
   * @param curves by group; none of groups at rest
   * @param cross of the evidence that spans groups
   */
  Evaluation(Point at, double value, Point gradient, Curves[] curves, Likelihood.Curve[] cross) {
    this.at = at;
    this.value = value;
    this.gradient = gradient;
    this.curves = curves;
    this.cross = cross;
  }

  Point at() {
    return at;
  }

  double value() {
    return value;
  }

  Point gradient() {
    return gradient;
  }

  /** By group; none of groups at rest. */
  Curves[] curves() {
    return curves;
  }

  Likelihood.Curve[] cross() {
    return cross;
  }
}
