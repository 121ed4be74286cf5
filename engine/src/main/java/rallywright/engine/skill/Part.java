package rallywright.engine.skill;

import java.util.List;
import java.util.Optional;

/**
 * One group of the system: its own latents first, then those of the border, which all groups share.
 * Given the border, a group shares nothing with another but evidence with guests.
 */
final class Part {

  /** What evidence that spans groups says to this one. */
  static final class Side {
    private final Term term;
    private final Likelihood.Curve curve;
    private final double[] outside;

    /**
     * A share of such evidence.
     *
     * @param term its rows, cut to the latents of this group
     * @param curve its likelihood around the present point
     * @param outside variances of what was cut off, as {@link Term#addPrecision} reads them
     */
    Side(Term term, Likelihood.Curve curve, double[] outside) {
      this.term = term;
      this.curve = curve;
      this.outside = outside;
    }
  }

  private final Prior prior;
  private final List<Term> terms;
  private final BlockGraph graph;
  private final EliminationPlan plan;
  private final int border;

  /**
   * A group.
   *
   * @param terms evidence of this group alone
   * @param cut evidence shared with other groups, cut to this one
   * @param border how many latents are shared
   */
  Part(Prior prior, List<Term> terms, List<Term> cut, int border) {
    this.prior = prior;
    this.terms = List.copyOf(terms);
    this.border = border;
    graph = prior.graph().copy();
    terms.forEach(term -> graph.connectAll(term.latents()));
    cut.forEach(term -> graph.connectAll(term.latents()));
    plan = new EliminationPlan(graph);
  }

  BlockGraph graph() {
    return graph;
  }

  List<Term> terms() {
    return terms;
  }

  Prior prior() {
    return prior;
  }

  /** How many latents are its own. */
  int own() {
    return graph.latents() - border;
  }

  /** Log posterior without the 2π of the prior; the gradient is added to {@code gradient}. */
  double logPosterior(double[] x, double[] gradient) {
    double value = prior.logDensity(x, gradient);
    for (Term term : terms) {
      Likelihood.Curve curve = term.at(x);
      value += curve.value();
      term.addGradient(curve, gradient);
    }
    return value;
  }

  double logLikelihood(double[] x) {
    return terms.stream().mapToDouble(term -> term.at(x).value()).sum();
  }

  /** The likelihood of each piece of evidence around x, as its factor and product need it. */
  Likelihood.Curve[] curves(double[] x) {
    return terms.stream().map(term -> term.at(x)).toArray(Likelihood.Curve[]::new);
  }

  /** The factor of minus the Hessian, the border kept; empty if it is not positive definite. */
  Optional<BlockCholesky> factor(Likelihood.Curve[] curves, List<Side> sides, Term.Bend bend) {
    BlockMatrix matrix = new BlockMatrix(graph);
    prior.addPrecision(matrix);
    for (int i = 0; i < curves.length; i++) {
      terms.get(i).addPrecision(curves[i], bend, matrix);
    }
    sides.forEach(side -> side.term.addPrecision(side.curve, bend, matrix, side.outside));
    return BlockCholesky.of(matrix, plan, border > 0 ? 1 : 0);
  }

  /** Adds minus the Hessian of this group times a vector. */
  void addProduct(Likelihood.Curve[] curves, double[] vector, double[] product) {
    prior.addProduct(vector, product);
    for (int i = 0; i < curves.length; i++) {
      terms.get(i).addProduct(curves[i], vector, product);
    }
  }
}
