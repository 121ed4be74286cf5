package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;

/**
 * Means and variances of all latents after a {@link LaplaceFit}.
 *
 * <p>Mean: the mode plus ½ H⁻¹ Σ (third derivative of the log-likelihood of a term, contracted with
 * the covariance of its predictors), the first correction of Laplace's method for a mean. It costs
 * one solve, as the covariances of the predictors come with the selected inverse. Reference:
 * Tierney and Kadane (1986); Rue, Martino and Chopin, JRSS-B 71 (2009), section 3.2.
 */
final class Moments {
  /** Step of the difference quotient of exact Hessians, in logits; its square is the error. */
  private static final double STEP = 1e-3;

  private final double[] mean;
  private final double[] variances;

  private Moments(double[] mean, double[] variances) {
    this.mean = mean;
    this.variances = variances;
  }

  static Moments of(LaplaceFit fit) {
    BlockGraph graph = fit.factor().plan().graph();
    List<List<Term>> termsOf = new ArrayList<>();
    for (int node = 0; node < graph.nodes(); node++) {
      termsOf.add(new ArrayList<>());
    }
    for (Term term : fit.terms()) {
      if (term.latents().length > 0) {
        termsOf.get(graph.nodeOf(term.latents()[0])).add(term);
      }
    }
    double[] mode = fit.mode();
    double[] variances = new double[mode.length];
    double[] pull = new double[mode.length];
    SelectedInverse.visit(
        fit.factor(),
        (node, covariances) -> {
          for (int i = graph.start(node); i < graph.start(node) + graph.size(node); i++) {
            variances[i] = covariances.of(i, i);
          }
          termsOf.get(node).forEach(term -> addPull(term, covariances, mode, pull));
        });
    double[] shift = fit.factor().solve(pull);
    for (int i = 0; i < mode.length; i++) {
      shift[i] += mode[i];
    }
    return new Moments(shift, variances);
  }

  /** Adds the pull of the skewness of one term, as a gradient over the latents. */
  private static void addPull(
      Term term, SelectedInverse.Covariances covariances, double[] mode, double[] pull) {
    int last = term.predictors() - 1;
    double[] spread = {
      covariance(term, covariances, 0, 0),
      covariance(term, covariances, 0, last),
      covariance(term, covariances, last, last)
    };
    double first = term.eta(0, mode);
    double second = term.eta(last, mode);
    double byFirst =
        contract(term, spread, first + STEP, second) - contract(term, spread, first - STEP, second);
    term.addRow(0, byFirst / (4 * STEP), pull);
    if (last == 1) {
      double bySecond =
          contract(term, spread, first, second + STEP)
              - contract(term, spread, first, second - STEP);
      term.addRow(1, bySecond / (4 * STEP), pull);
    }
  }

  private static double contract(Term term, double[] spread, double first, double second) {
    Likelihood.Curve curve = term.likelihood().at(first, second);
    return curve.d11() * spread[0] + 2 * curve.d12() * spread[1] + curve.d22() * spread[2];
  }

  private static double covariance(
      Term term, SelectedInverse.Covariances covariances, int one, int two) {
    int[] latents = term.latents();
    double sum = 0;
    for (int i = 0; i < latents.length; i++) {
      for (int j = 0; j < latents.length; j++) {
        double weight = term.weights(one)[i] * term.weights(two)[j];
        if (weight != 0) {
          sum += weight * covariances.of(latents[i], latents[j]);
        }
      }
    }
    return sum;
  }

  /** The corrected means; not to be changed. */
  double[] mean() {
    return mean;
  }

  double variance(int latent) {
    return variances[latent];
  }
}
