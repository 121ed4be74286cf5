package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;

/**
 * The spread of one group: the variances of its latents, the pull of the skewness of its evidence,
 * and the variances of its share of evidence that spans groups.
 */
final class Spread {
  /** Step of the difference quotient of exact Hessians, in logits; its square is the error. */
  private static final double STEP = 1e-3;

  private final double[] variances;
  private final double[] pull;
  private final List<double[]> cutVariances;

  private Spread(double[] variances, double[] pull, List<double[]> cutVariances) {
    this.variances = variances;
    this.pull = pull;
    this.cutVariances = cutVariances;
  }

  static Spread of(LaplaceFit fit, int part, double[][] border) {
    Part group = fit.assembly().part(part);
    BlockGraph graph = group.graph();
    double[] mode = fit.settled(part);
    double[] variances = new double[mode.length];
    double[] pull = new double[mode.length];
    List<Cut> cuts = cuts(fit, part);
    List<List<Term>> termsOf = byFirstNode(graph, group.others());
    Binomials binomials = group.binomials();
    List<List<Cut>> cutsOf = cutsByFirstNode(graph, cuts);
    SelectedInverse.visit(
        fit.curvature().factor(part),
        border,
        (node, covariances) -> {
          int end = graph.start(node) + graph.size(node);
          for (int i = graph.start(node); i < end; i++) {
            variances[i] = covariances.of(i, i);
          }
          int last = binomials.from(end);
          for (int i = binomials.from(graph.start(node)); i < last; i++) {
            binomials.addPull(i, covariances, mode, pull);
          }
          termsOf.get(node).forEach(term -> addPull(term, covariances, mode, pull));
          cutsOf.get(node).forEach(cut -> cut.addPull(covariances, pull));
        });
    fit.curvature().factor(part).forward(pull);
    return new Spread(variances, pull, cuts.stream().map(cut -> cut.variance).toList());
  }

  /** The share of this group in a piece of evidence that spans groups. */
  private static final class Cut {
    private final Term term;
    private final double[] outside;
    private final double[] eta;
    private double[] variance = {0, 0, 0};

    private Cut(CrossTerm whole, Term term, double[] outside, Point mode) {
      this.term = term;
      this.outside = outside;
      int last = whole.predictors() - 1;
      eta = new double[] {whole.eta(0, mode), whole.eta(last, mode)};
    }

    private void addPull(SelectedInverse.Covariances covariances, double[] pull) {
      variance = spread(term, covariances);
      double[] all = new double[3];
      for (int k = 0; k < 3; k++) {
        all[k] = variance[k] + outside[k];
      }
      Spread.addPull(term, all, eta, pull);
    }
  }

  private static List<Cut> cuts(LaplaceFit fit, int part) {
    List<Cut> cuts = new ArrayList<>();
    List<CrossTerm> cross = fit.assembly().cross();
    for (int i = 0; i < cross.size(); i++) {
      List<CrossTerm.Cut> shares = cross.get(i).cuts();
      for (int j = 0; j < shares.size(); j++) {
        if (shares.get(j).part() == part) {
          cuts.add(
              new Cut(cross.get(i), shares.get(j).term(), fit.outside().of(i, j), fit.point()));
        }
      }
    }
    return cuts;
  }

  private static List<List<Term>> byFirstNode(BlockGraph graph, List<Term> terms) {
    List<List<Term>> byNode = new ArrayList<>();
    for (int node = 0; node < graph.nodes(); node++) {
      byNode.add(new ArrayList<>());
    }
    for (Term term : terms) {
      if (term.latents().length > 0) {
        byNode.get(graph.nodeOf(term.latents()[0])).add(term);
      }
    }
    return byNode;
  }

  private static List<List<Cut>> cutsByFirstNode(BlockGraph graph, List<Cut> cuts) {
    List<List<Cut>> byNode = new ArrayList<>();
    for (int node = 0; node < graph.nodes(); node++) {
      byNode.add(new ArrayList<>());
    }
    for (Cut cut : cuts) {
      if (cut.term.latents().length > 0) {
        byNode.get(graph.nodeOf(cut.term.latents()[0])).add(cut);
      }
    }
    return byNode;
  }

  private static double[] spread(Term term, SelectedInverse.Covariances covariances) {
    int last = term.predictors() - 1;
    return new double[] {
      covariance(term, covariances, 0, 0),
      covariance(term, covariances, 0, last),
      covariance(term, covariances, last, last)
    };
  }

  private static void addPull(
      Term term, SelectedInverse.Covariances covariances, double[] mode, double[] pull) {
    double[] eta = {term.eta(0, mode), term.eta(term.predictors() - 1, mode)};
    addPull(term, spread(term, covariances), eta, pull);
  }

  /** Adds the pull of the skewness of one term, as a gradient over the latents. */
  private static void addPull(Term term, double[] spread, double[] eta, double[] pull) {
    double first = eta[0];
    double second = eta[1];
    double byFirst =
        contract(term, spread, first + STEP, second) - contract(term, spread, first - STEP, second);
    term.addRow(0, byFirst / (4 * STEP), pull);
    if (term.predictors() == 2) {
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

  /** The variance of a latent of the group. */
  double variance(int latent) {
    return variances[latent];
  }

  /** The pull of the skewness after the first half of a solve; not to be changed. */
  double[] pull() {
    return pull;
  }

  List<double[]> cutVariances() {
    return cutVariances;
  }
}
