package rallywright.engine.skill;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
  private final int[] owners;
  private final int lateNode;

  /**
   * A group.
   *
   * @param terms evidence of this group alone
   * @param cut evidence shared with other groups, cut to this one
   * @param border how many latents are shared
   */
  Part(Prior prior, List<Term> terms, List<Term> cut, int border) {
    this(prior, terms, cut, border, 0);
  }

  /**
   * A group in which an update is expected to reach back to a node, the first of a week.
   *
   * @param lateNode that node; 0 where there is none
   */
  Part(Prior prior, List<Term> terms, List<Term> cut, int border, int lateNode) {
    this.lateNode = border > 0 ? lateNode : 0;
    this.prior = prior;
    this.terms = List.copyOf(terms);
    this.border = border;
    owners = prior.owners();
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

  /** The largest pull of a slope on one owner of its own latents, all signs alike. */
  double largestPull(double[] slope) {
    Map<Integer, Double> pulls = new HashMap<>();
    for (int i = 0; i < own(); i++) {
      if (slope[i] != 0) {
        pulls.merge(owners[i], Math.abs(slope[i]), Double::sum);
      }
    }
    return pulls.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
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

  /**
   * The factor of minus the Hessian, the border kept; empty if it is not positive definite.
   *
   * @param earlier a factor of this group before its newest weeks, to be taken up at its
   *     checkpoint; what stands before that must be as it was
   */
  Optional<BlockCholesky> factor(
      Likelihood.Curve[] curves,
      List<Side> sides,
      Term.Bend bend,
      Optional<BlockCholesky> earlier) {
    Optional<BlockCholesky> resumed =
        earlier
            .filter(before -> before.checkpoint().node() <= lateNode)
            .filter(before -> plan.continues(before.plan(), before.checkpoint().node()));
    BlockMatrix matrix = new BlockMatrix(graph);
    int from = resumed.map(before -> graph.start(before.checkpoint().node())).orElse(0);
    Checkpoint next = Checkpoint.none();
    if (lateNode > 0) {
      resumed.ifPresent(
          before -> matrix.addRows(graph.nodes() - 1, before.checkpoint().earlyBorder()));
      int late = graph.start(lateNode);
      addTerms(curves, sides, bend, new Weeks(matrix, from, late));
      next = new Checkpoint(lateNode, matrix.rows(graph.nodes() - 1));
      addTerms(curves, sides, bend, new Weeks(matrix, late, Integer.MAX_VALUE));
    } else {
      addTerms(curves, sides, bend, new Weeks(matrix, 0, Integer.MAX_VALUE));
    }
    prior.addPrecision(matrix);
    return resumed.isPresent()
        ? BlockCholesky.resumed(matrix, plan, resumed.get(), next)
        : BlockCholesky.of(matrix, plan, border > 0 ? 1 : 0, next);
  }

  /** A matrix, and of which first latents the evidence goes into it. */
  private record Weeks(BlockMatrix matrix, int from, int until) {
    private boolean hold(Term term) {
      int first = term.latents().length == 0 ? 0 : term.latents()[0];
      return first >= from && first < until;
    }
  }

  private void addTerms(Likelihood.Curve[] curves, List<Side> sides, Term.Bend bend, Weeks weeks) {
    for (int i = 0; i < curves.length; i++) {
      if (weeks.hold(terms.get(i))) {
        terms.get(i).addPrecision(curves[i], bend, weeks.matrix);
      }
    }
    for (Side side : sides) {
      if (weeks.hold(side.term)) {
        side.term.addPrecision(side.curve, bend, weeks.matrix, side.outside);
      }
    }
  }

  /** Adds minus the Hessian of this group times a vector. */
  void addProduct(Likelihood.Curve[] curves, double[] vector, double[] product) {
    prior.addProduct(vector, product);
    for (int i = 0; i < curves.length; i++) {
      terms.get(i).addProduct(curves[i], vector, product);
    }
  }
}
