package rallywright.engine.skill;

/**
 * What a group says about the border once its own latents have settled: a quadratic around the
 * border at which they did. With it a group that heard nothing new need not be solved again.
 */
final class Summary {
  private final double[] at;
  private final double value;
  private final double[] gradient;
  private final double[][] remainder;
  private final double[] ownSlope;

  /**
   * A quadratic.
   *
   * @param at the border then
   * @param value log posterior of the group
   * @param gradient its slope along the border
   * @param remainder minus its bend along the border, the group's own latents following
   * @param ownSlope its slope along its own latents, which balanced the pull of guests then
   */
  Summary(double[] at, double value, double[] gradient, double[][] remainder, double[] ownSlope) {
    this.at = at;
    this.ownSlope = ownSlope;
    this.value = value;
    this.gradient = gradient;
    this.remainder = remainder;
  }

  /** Only the bend, of a group that is looked at for nothing else. */
  static Summary ofRemainder(double[][] remainder) {
    return new Summary(new double[0], 0, new double[0], remainder, new double[0]);
  }

  /** The border at which the group came to rest. */
  double[] at() {
    return at;
  }

  double[][] remainder() {
    return remainder;
  }

  double[] ownSlope() {
    return ownSlope;
  }

  /** The value at a border; the slope is added. */
  double at(double[] border, double[] slope) {
    double sum = value;
    for (int i = 0; i < border.length; i++) {
      double bend = 0;
      for (int j = 0; j < border.length; j++) {
        bend += remainder[i][j] * (border[j] - at[j]);
      }
      slope[i] += gradient[i] - bend;
      sum += (gradient[i] - bend / 2) * (border[i] - at[i]);
    }
    return sum;
  }
}
