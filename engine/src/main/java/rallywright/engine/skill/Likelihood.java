package rallywright.engine.skill;

/**
 * The log-likelihood of one piece of evidence as a function of its one or two predictors η (logits
 * of rally chances), without binomial coefficients.
 */
interface Likelihood {
  /** One or two. */
  int predictors();

  /** Value, gradient and Hessian at η; for one predictor the second entry is ignored. */
  Curve at(double eta, double etaOther);

  /**
   * Value, gradient and Hessian of a log-likelihood by two predictors.
   *
   * @param value natural logarithm of the likelihood
   */
  record Curve(double value, double d1, double d2, double d11, double d12, double d22) {}
}
