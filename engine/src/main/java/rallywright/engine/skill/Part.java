package rallywright.engine.skill;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

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

  /** What a piece of evidence costs in a pass, in multiplications of a factor; measured roughly. */
  private static final int A_TERM = 250;

  private final Prior prior;
  private final Binomials binomials;
  private final List<Term> others;
  private final BlockGraph graph;
  private final BlockPattern pattern;
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
    Map<Boolean, List<Term>> kinds =
        terms.stream()
            .collect(
                Collectors.partitioningBy(term -> term.likelihood() instanceof BinomialLikelihood));
    binomials = new Binomials(kinds.getOrDefault(true, List.of()));
    others = List.copyOf(kinds.getOrDefault(false, List.of()));
    this.border = border;
    owners = prior.owners();
    graph = prior.graph().copy();
    terms.forEach(term -> graph.connectAll(term.latents()));
    cut.forEach(term -> graph.connectAll(term.latents()));
    pattern = new BlockPattern(graph);
    plan = new EliminationPlan(graph);
  }

  private Part(Part same, Prior prior) {
    this.prior = prior;
    binomials = same.binomials;
    others = same.others;
    graph = same.graph;
    pattern = same.pattern;
    plan = same.plan;
    border = same.border;
    owners = same.owners;
    lateNode = same.lateNode;
  }

  /** The same group and evidence under another prior of the same pattern. */
  Part with(Prior other) {
    return new Part(this, other);
  }

  BlockGraph graph() {
    return graph;
  }

  /** Evidence of this group alone with one predictor and one chance. */
  Binomials binomials() {
    return binomials;
  }

  /** The other evidence of this group alone. */
  List<Term> others() {
    return others;
  }

  Prior prior() {
    return prior;
  }

  /** How many latents are its own. */
  int own() {
    return graph.latents() - border;
  }

  /** Whether factoring costs less than a pass over the evidence. */
  boolean isCheapToFactor() {
    return plan.multiplications() < (double) A_TERM * (binomials.count() + others.size());
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

  /** The log posterior around x; its gradient is added to {@code gradient}. */
  Curves at(double[] x, double[] gradient) {
    double value = prior.logDensity(x, gradient);
    double[] bends = new double[binomials.count()];
    value += binomials.at(x, gradient, bends);
    Likelihood.Curve[] curves = new Likelihood.Curve[others.size()];
    for (int i = 0; i < curves.length; i++) {
      curves[i] = others.get(i).at(x);
      value += curves[i].value();
      others.get(i).addGradient(curves[i], gradient);
    }
    return new Curves(value, bends, curves);
  }

  double logLikelihood(double[] x) {
    double[] ignored = new double[x.length];
    return at(x, ignored).value() - prior.logDensity(x, ignored);
  }

  /**
   * The factor of minus the Hessian, the border kept; empty if it is not positive definite.
   *
   * @param earlier a factor of this group before its newest weeks, to be taken up at its
   *     checkpoint; what stands before that must be as it was
   */
  Optional<BlockCholesky> factor(
      Curves curves, List<Side> sides, Term.Bend bend, Optional<BlockCholesky> earlier) {
    Optional<BlockCholesky> resumed =
        earlier
            .filter(before -> before.checkpoint().node() <= lateNode)
            .filter(before -> plan.continues(before.plan(), before.checkpoint().node()));
    BlockMatrix matrix = new BlockMatrix(pattern);
    if (resumed.isEmpty()) {
      binomials.findPlaces(pattern);
    }
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
      return term.firstLatent() >= from && term.firstLatent() < until;
    }
  }

  private void addTerms(Curves curves, List<Side> sides, Term.Bend bend, Weeks weeks) {
    binomials.addPrecision(curves.bends(), weeks.matrix, weeks.from, weeks.until);
    for (int i = 0; i < others.size(); i++) {
      if (weeks.hold(others.get(i))) {
        others.get(i).addPrecision(curves.others()[i], bend, weeks.matrix);
      }
    }
    for (Side side : sides) {
      if (weeks.hold(side.term)) {
        side.term.addPrecision(side.curve, bend, weeks.matrix, side.outside);
      }
    }
  }

  /** Adds minus the Hessian of this group times a vector. */
  void addProduct(Curves curves, double[] vector, double[] product) {
    prior.addProduct(vector, product);
    binomials.addProduct(curves.bends(), vector, product);
    for (int i = 0; i < others.size(); i++) {
      others.get(i).addProduct(curves.others()[i], vector, product);
    }
  }
}
