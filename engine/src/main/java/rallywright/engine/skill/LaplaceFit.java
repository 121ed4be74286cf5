package rallywright.engine.skill;

import java.util.List;
import java.util.Optional;

/**
 * The Gaussian approximation of a posterior at its mode: a Gaussian prior times sparse logistic
 * evidence.
 *
 * <p>Method: Newton with the exact Hessian. Where that is not positive definite (a score without
 * its rallies can bend upward) the upward directions of the evidence are left out for the step. A
 * step is halved until the posterior rises enough (Armijo). At the end the exact Hessian H at the
 * mode gives covariances H⁻¹ and the log evidence by Laplace: log likelihood + log prior + (n/2)
 * log 2π − ½ log det H, where the 2π of the prior cancels.
 *
 * <p>Reference: Tierney and Kadane, Accurate approximations for posterior moments and marginal
 * densities, JASA 81 (1986).
 */
final class LaplaceFit {
  /** A step shorter than this, in posterior SDs along its direction, is lost in round-off. */
  private static final double SMALLEST_STEP = 1e-9;

  /** Beyond this many steps something is wrong with the evidence; ten are usual. */
  private static final int MOST_STEPS = 200;

  /** A step cut down to this share without any rise means that the slope is wrong. */
  private static final double SHORTEST_SCALE = 1e-10;

  /** The share of the rise promised by the slope that a step must bring. */
  private static final double ARMIJO = 1e-4;

  /** A promised rise below this share of the value is lost in round-off: take the whole step. */
  private static final double ROUND_OFF = 1e-11;

  /** A slope below this share of the one before is quick progress: keep the factor. */
  private static final double QUICK = 0.04;

  private final GaussianPrior prior;
  private final List<Term> terms;
  private final EliminationPlan plan;
  private final BlockGraph graph;

  private double[] mode;
  private double logPosterior;
  private double[] gradient;
  private BlockCholesky factor;
  private double slopeBefore = Double.POSITIVE_INFINITY;

  private LaplaceFit(GaussianPrior prior, List<Term> terms, double[] start) {
    this.prior = prior;
    this.terms = List.copyOf(terms);
    graph = prior.precision().graph().copy();
    for (Term term : terms) {
      graph.connectAll(term.latents());
    }
    plan = new EliminationPlan(graph);
    mode = start.clone();
    gradient = new double[start.length];
    logPosterior = logPosterior(mode, gradient);
    factor = factorAtMode();
  }

  /** The fit, sought from the prior mean. */
  static LaplaceFit of(GaussianPrior prior, List<Term> terms) {
    return from(prior.mean(), prior, terms);
  }

  /** The fit, sought from {@code start}, such as the mode of yesterday. */
  static LaplaceFit from(double[] start, GaussianPrior prior, List<Term> terms) {
    LaplaceFit fit = new LaplaceFit(prior, terms, start);
    for (int step = 0; step < MOST_STEPS; step++) {
      if (fit.advance() < SMALLEST_STEP) {
        fit.factor = fit.factorAtMode();
        return fit;
      }
    }
    throw new IllegalStateException("No mode found in " + MOST_STEPS + " steps.");
  }

  /** One Newton step; returns its length in posterior SDs along its direction. */
  private double advance() {
    double[] direction = factor.solve(gradient);
    if (!(dot(direction, gradient) < QUICK * slopeBefore)) {
      factor = factorAtMode();
      direction = factor.solve(gradient);
    }
    double slope = dot(direction, gradient);
    double scale = stepLength(direction, slope);
    mode = along(direction, scale);
    gradient = new double[mode.length];
    logPosterior = logPosterior(mode, gradient);
    slopeBefore = slope;
    return scale * Math.sqrt(Math.max(0, slope));
  }

  private static double dot(double[] x, double[] y) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += x[i] * y[i];
    }
    return sum;
  }

  private double stepLength(double[] direction, double slope) {
    if (slope < ROUND_OFF * (1 + Math.abs(logPosterior))) {
      return 1;
    }
    double scale = 1;
    double[] ignored = new double[mode.length];
    while (!(logPosterior(along(direction, scale), ignored)
        >= logPosterior + ARMIJO * scale * slope)) {
      scale /= 2;
      if (scale < SHORTEST_SCALE) {
        throw new IllegalStateException("The posterior does not rise along its own slope.");
      }
    }
    return scale;
  }

  private double[] along(double[] direction, double scale) {
    double[] x = mode.clone();
    for (int i = 0; i < x.length; i++) {
      x[i] += scale * direction[i];
    }
    return x;
  }

  /** Log posterior without the 2π of the prior; the gradient is added to {@code into}. */
  private double logPosterior(double[] x, double[] into) {
    double value = prior.logDensity(x, into);
    for (Term term : terms) {
      Likelihood.Curve curve = term.at(x);
      value += curve.value();
      term.addGradient(curve, into);
    }
    return value;
  }

  private BlockCholesky factorAtMode() {
    Optional<BlockCholesky> exact = BlockCholesky.of(precision(Term.Bend.EXACT), plan);
    return exact
        .or(() -> BlockCholesky.of(precision(Term.Bend.GUARDED), plan))
        .orElseThrow(() -> new IllegalStateException("The prior must have a density."));
  }

  private BlockMatrix precision(Term.Bend bend) {
    BlockMatrix matrix = new BlockMatrix(graph);
    matrix.addAll(prior.precision());
    for (Term term : terms) {
      term.addPrecision(term.at(mode), bend, matrix);
    }
    return matrix;
  }

  double[] mode() {
    return mode.clone();
  }

  /** The factor of H, the negative Hessian of the log posterior at the mode. */
  BlockCholesky factor() {
    return factor;
  }

  List<Term> terms() {
    return terms;
  }

  /** Log likelihood at the mode, without binomial coefficients. */
  double logLikelihood() {
    return terms.stream().mapToDouble(term -> term.at(mode).value()).sum();
  }

  /** Log marginal likelihood by Laplace, without binomial coefficients. */
  double logEvidence() {
    return logPosterior - factor.logDet() / 2;
  }
}
