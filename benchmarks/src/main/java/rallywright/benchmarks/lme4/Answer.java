package rallywright.benchmarks.lme4;

import java.util.List;

/**
 * A fitted random-effects model.
 *
 * @param sd of the random effects, in logits
 * @param logLikelihood the marginal one by Laplace, without binomial coefficients
 * @param fixed fixed effects in logits; empty where there are none
 * @param modes the random effects in logits
 */
record Answer(double sd, double logLikelihood, List<Double> fixed, List<Double> modes) {
  Answer {
    fixed = List.copyOf(fixed);
    modes = List.copyOf(modes);
  }

  /** The largest difference of any number. */
  double differenceFrom(Answer other) {
    double most = Math.max(Math.abs(sd - other.sd), Math.abs(logLikelihood - other.logLikelihood));
    return Math.max(most, Math.max(most(fixed, other.fixed), most(modes, other.modes)));
  }

  private static double most(List<Double> some, List<Double> others) {
    if (some.size() != others.size()) {
      throw new IllegalArgumentException(
          "The answers hold " + some.size() + " and " + others.size() + " numbers.");
    }
    double most = 0;
    for (int i = 0; i < some.size(); i++) {
      most = Math.max(most, Math.abs(some.get(i) - others.get(i)));
    }
    return most;
  }
}
