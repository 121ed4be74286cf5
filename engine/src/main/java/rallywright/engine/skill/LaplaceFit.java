package rallywright.engine.skill;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The Gaussian approximation of a posterior at its mode: a Gaussian prior times sparse logistic
 * evidence.
 *
 * <p>Method: Newton with the exact Hessian. Where that is not positive definite (a score without
 * its rallies can bend upward) the upward directions of the evidence are left out for the step. A
 * step is halved until the posterior rises enough (Armijo). Where evidence spans groups the Newton
 * system is solved by conjugate gradients on top of the factor ({@link ConjugateGradient}), so that
 * the mode is exact; spreads then come from the factor alone. At the end the Hessian H at the mode
 * gives covariances H⁻¹ and the log evidence by Laplace: log likelihood + log prior + (n/2) log 2π
 * − ½ log det H, where the 2π of the prior cancels.
 *
 * <p>Reference: Tierney and Kadane, Accurate approximations for posterior moments and marginal
 * densities, JASA 81 (1986).
 */
final class LaplaceFit {
  /** A step shorter than this, in posterior SDs along its direction, is lost in round-off. */
  private static final double SMALLEST_STEP = 1e-9;

  /** The same where groups rest and follow by a quadratic: a hundredth of an SD, of all latents. */
  private static final double SMALL_STEP = 1e-2;

  /** A move, in logits, that changes the information of a rally by a few hundredths at most. */
  private static final double NOTICEABLE = 0.05;

  /** In an update the slope may fall more slowly before anything is factored anew. */
  private static final double QUICK_ENOUGH = 0.5;

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

  /** The same where a factor costs less than a pass over the evidence. */
  private static final double QUICK_BESIDE_CHEAP = 1e-4;

  /**
   * A pull on one player, in rallies: times the variance of a skill (at most about 0.3) the most
   * that it can move one of the player's skills, here less than 0.01 logits.
   */
  private static final double SLIGHT_PULL = 0.03;

  private static final int MOST_TURNS = 20;

  private final Assembly assembly;
  private final BlockCholesky[] kept;
  private final Outside outside;

  private Evaluation present;
  private Point factoredAt;
  private Curvature curvature;
  private double slopeBefore = Double.POSITIVE_INFINITY;
  private Summary @Nullable [] summaries;

  private LaplaceFit(Assembly assembly, Point start, BlockCholesky[] kept, Outside outside) {
    this.assembly = assembly;
    this.kept = kept;
    this.outside = outside;
    present = assembly.at(start);
    factoredAt = start;
    curvature = factored();
  }

  private LaplaceFit(LaplaceFit fit, Assembly assembly, Point mode) {
    this.assembly = assembly;
    present = assembly.at(mode);
    factoredAt = fit.factoredAt;
    kept = fit.kept;
    outside = fit.outside;
    curvature = fit.curvature;
  }

  /** The fit of a system without evidence that spans groups, sought from the prior mean. */
  static LaplaceFit of(Assembly assembly) {
    return from(
        assembly, assembly.start(), new BlockCholesky[assembly.parts()], Outside.none(List.of()));
  }

  /**
   * The fit of the same evidence under another prior, not far from this one. The first step is made
   * with the factor of this fit: it follows the mode to first order.
   */
  LaplaceFit under(Assembly other) {
    return new LaplaceFit(this, other, point()).settled(SMALLEST_STEP);
  }

  /** The fit of one group without a border, sought from the prior mean. */
  static LaplaceFit of(Prior prior, List<Term> terms) {
    return from(prior.mean(), prior, terms);
  }

  /** The fit of one group without a border, sought from {@code start}. */
  static LaplaceFit from(double[] start, Prior prior, List<Term> terms) {
    Assembly assembly =
        Assembly.of(List.of(new Part(prior, terms, List.of(), 0)), Border.none(), List.of());
    Point point = new Point(new double[][] {start.clone()}, new double[0]);
    return from(assembly, point, new BlockCholesky[1], Outside.none(List.of()));
  }

  /**
   * The fit of a system.
   *
   * @param start where to begin, such as the mode of yesterday
   * @param kept the factors of resting groups, and of others those that may be taken up
   * @param outside how far groups know each other's share of the evidence between them
   */
  static LaplaceFit from(Assembly assembly, Point start, BlockCholesky[] kept, Outside outside) {
    LaplaceFit fit = new LaplaceFit(assembly, start, kept, outside);
    return fit.settled(fit.isUpdate() ? SMALL_STEP : SMALLEST_STEP);
  }

  /** Goes on until a step is no longer than {@code smallest}; see {@link #advance}. */
  private LaplaceFit settled(double smallest) {
    double enough =
        isUpdate() ? smallest : smallest * Math.max(1, Math.sqrt(point().latents()) / 10);
    for (int step = 0; step < MOST_STEPS; step++) {
      if (advance() < enough) {
        refresh();
        return this;
      }
    }
    throw new IllegalStateException("No mode found in " + MOST_STEPS + " steps.");
  }

  /**
   * The same mode with spreads for what groups now know of each other's share. It takes the room of
   * this fit, which cannot be used afterwards.
   */
  LaplaceFit withOutside(Outside other) {
    curvature.release();
    return new LaplaceFit(assembly, point(), kept, other);
  }

  /**
   * One Newton step; returns its length in posterior SDs, or a hundred times what is left after it
   * if that is less: the length times the share by which steps shrink.
   */
  private double advance() {
    Point direction = direction();
    if (!(direction.dot(present.gradient()) < quick() * slopeBefore)) {
      curvature.release();
      curvature = factored();
      direction = direction();
    }
    double slope = Math.max(0, direction.dot(present.gradient()));
    double scale = step(direction, slope);
    double shrinks = slopeBefore < Double.POSITIVE_INFINITY ? Math.sqrt(slope / slopeBefore) : 1;
    slopeBefore = slope;
    return scale * Math.sqrt(slope) * Math.min(1, 100 * shrinks);
  }

  private double quick() {
    return isUpdate() ? QUICK_ENOUGH : assembly.isCheapToFactor() ? QUICK_BESIDE_CHEAP : QUICK;
  }

  /** Factors at the mode; in an update only those groups that moved noticeably. */
  private void refresh() {
    if (!isUpdate()) {
      curvature.release();
      curvature = factored();
      return;
    }
    boolean[] moved = new boolean[assembly.parts()];
    boolean any = false;
    BlockCholesky[] earlier = kept.clone();
    for (int part = 0; part < moved.length; part++) {
      moved[part] = !assembly.rests(part) && farthest(part, point().own(part).length) > NOTICEABLE;
      any |= moved[part];
      if (moved[part] && farthest(part, before(part)) > NOTICEABLE) {
        earlier[part] = null;
      }
    }
    if (any) {
      curvature = curvature.refreshed(present, moved, earlier, outside);
    }
  }

  /** The latents of a group before the place at which its factor was taken up. */
  private int before(int part) {
    BlockCholesky earlier = kept[part];
    return earlier == null || !earlier.checkpoint().isSet()
        ? 0
        : earlier.plan().graph().start(earlier.checkpoint().node());
  }

  /** Whether something of an earlier fit is taken over. */
  private boolean isUpdate() {
    return Arrays.stream(kept).anyMatch(Objects::nonNull);
  }

  private double farthest(int part, int until) {
    double farthest = 0;
    for (int i = 0; i < until; i++) {
      farthest = Math.max(farthest, Math.abs(point().own(part)[i] - factoredAt.own(part)[i]));
    }
    return farthest;
  }

  /** In an update the factor alone does: what guests add is small, and the slope is exact. */
  private Point direction() {
    return assembly.cross().isEmpty() || isUpdate()
        ? curvature.solve(present.gradient())
        : ConjugateGradient.solve(curvature, present.gradient());
  }

  /** Goes along a direction until the posterior rose enough; returns how far. */
  private double step(Point direction, double slope) {
    double value = present.value();
    Point from = point();
    boolean lostInRoundOff = slope < ROUND_OFF * (1 + Math.abs(value));
    double scale = 1;
    present = assembly.at(from.plus(scale, direction));
    while (!lostInRoundOff && !(present.value() >= value + ARMIJO * scale * slope)) {
      scale /= 2;
      if (scale < SHORTEST_SCALE) {
        throw new IllegalStateException("The posterior does not rise along its own slope.");
      }
      present = assembly.at(from.plus(scale, direction));
    }
    return scale;
  }

  private Curvature factored() {
    factoredAt = point();
    return Curvature.of(assembly, present, kept, outside);
  }

  /** The mode of the only group. */
  double[] mode() {
    return point().own(0).clone();
  }

  /** The mode; resting groups stand where they came to rest. */
  Point point() {
    return present.at();
  }

  Assembly assembly() {
    return assembly;
  }

  Curvature curvature() {
    return curvature;
  }

  Outside outside() {
    return outside;
  }

  /** The factor of H of the only group. */
  BlockCholesky factor() {
    return curvature.factor(0);
  }

  /** The mode of a group and of the border; a resting group follows the border. */
  double[] settled(int part) {
    double[] local = point().local(part);
    if (assembly.rests(part)) {
      double[] follow = new double[local.length];
      double[] at = assembly.resting(part).at();
      int own = local.length - at.length;
      for (int i = 0; i < at.length; i++) {
        follow[own + i] = local[own + i] - at[i];
      }
      curvature.factor(part).backward(follow);
      for (int i = 0; i < own; i++) {
        local[i] += follow[i];
      }
    }
    return local;
  }

  /** The pull of evidence that spans groups at a point. */
  private Point guestPull(Point x) {
    Point pull = Point.zeroLike(x);
    for (CrossTerm term : assembly.cross()) {
      term.addGradient(term.at(x), pull);
    }
    return pull;
  }

  /** What each group says about the border, so that it may rest. */
  synchronized Summary[] summaries() {
    if (summaries == null) {
      summaries = new Summary[assembly.parts()];
      for (int part = 0; part < summaries.length; part++) {
        summaries[part] =
            assembly.rests(part)
                ? assembly.resting(part)
                : summary(part, point().border(), point().own(part));
      }
    }
    return summaries.clone();
  }

  private Summary summary(int part, double[] border, double[] own) {
    double[] local = Arrays.copyOf(own, own.length + border.length);
    System.arraycopy(border, 0, local, own.length, border.length);
    double[] slope = new double[local.length];
    double value = assembly.part(part).at(local, slope).value();
    return new Summary(
        border.clone(),
        value,
        Arrays.copyOfRange(slope, own.length, slope.length),
        assembly.rests(part)
            ? assembly.resting(part).remainder()
            : curvature.factor(part).remainder(),
        Arrays.copyOf(slope, own.length));
  }

  /**
   * The same fit after groups have yielded to what guests now say of them, also those at rest, in
   * turns until no pull is left that is more than {@link #SLIGHT_PULL}; the border stays.
   */
  LaplaceFit yielded() {
    Summary[] resting = new Summary[assembly.parts()];
    Summary[] present = summaries();
    double[][] own = new double[assembly.parts()][];
    for (int part = 0; part < own.length; part++) {
      own[part] = point().own(part);
    }
    boolean moved = !assembly.cross().isEmpty();
    for (int turn = 0; turn < MOST_TURNS && moved; turn++) {
      Point pull = guestPull(new Point(own, point().border()));
      moved =
          IntStream.range(0, own.length)
                  .parallel()
                  .filter(part -> yields(part, pull, own, present))
                  .count()
              > 0;
    }
    for (int part = 0; part < own.length; part++) {
      if (assembly.rests(part)) {
        resting[part] = present[part];
      }
    }
    return new LaplaceFit(this, assembly.withResting(resting), new Point(own, point().border()));
  }

  /** One step of a group, if the pull on it is not slight. */
  private boolean yields(int part, Point pull, double[][] own, Summary[] present) {
    double[] slope = sum(pull.own(part), present[part].ownSlope());
    if (assembly.part(part).largestPull(slope) <= SLIGHT_PULL) {
      return false;
    }
    own[part] = stepped(part, own[part], slope);
    present[part] = summary(part, present[part].at(), own[part]);
    return true;
  }

  private static double[] sum(double[] x, double[] y) {
    double[] sum = x.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += y[i];
    }
    return sum;
  }

  private double[] stepped(int part, double[] own, double[] slope) {
    double[] step = Arrays.copyOf(slope, own.length + point().border().length);
    curvature.factor(part).forward(step);
    Arrays.fill(step, own.length, step.length, 0);
    curvature.factor(part).backward(step);
    return sum(own, Arrays.copyOf(step, own.length));
  }

  /** Log likelihood at the mode of the only group, without binomial coefficients. */
  double logLikelihood() {
    return assembly.part(0).logLikelihood(point().own(0));
  }

  /** Log marginal likelihood by Laplace, without binomial coefficients. */
  double logEvidence() {
    double logDet = curvature.border().logDet();
    for (int part = 0; part < assembly.parts(); part++) {
      logDet += curvature.factor(part).logDet();
    }
    return present.value() - logDet / 2;
  }
}
