package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;

/**
 * How the Laplace evidence changes with the hyper-parameters, exactly and at the cost of one pass
 * through the selected inverse.
 *
 * <p>Method: the evidence depends on a precision Q of an increment r of the prior by ½ log det Q −
 * ½ tr(Q E), where E is the posterior second moment of r: its covariance, plus d dᵀ + d sᵀ + s dᵀ
 * with d its value at the mode and s the shift of the mean from the mode. That shift carries what
 * the log determinant of the Hessian changes when the mode moves (differentiate log det H along dx̂
 * = −H⁻¹ dQ d; the third derivatives of the likelihood, contracted with the covariances, are the
 * pull of {@link Spread}).
 */
final class EvidenceSlope {
  private static final int LEVEL = 0;
  private static final int GROUP = 1;
  private static final int SKILL = 2;
  private static final int WEEK = 3;
  private static final int STEP_OF_LEVEL = 4;
  private static final int EFFECTS = 5;
  private static final int GAINS = 6;

  private final ClubSystem system;
  private final SkillPrior prior;
  private final LaplaceFit fit;
  private final Moments moments;
  private final double[] slope = new double[HyperParameters.COUNT];
  private final int skills;

  private EvidenceSlope(ClubSystem system, SkillPrior prior, LaplaceFit fit, Moments moments) {
    this.system = system;
    this.prior = prior;
    this.fit = fit;
    this.moments = moments;
    skills = system.club().skills().skills();
  }

  /** The slope along the logarithms of the hyper-parameters. */
  static double[] of(ClubSystem system, SkillPrior prior, LaplaceFit fit, Moments moments) {
    EvidenceSlope all = new EvidenceSlope(system, prior, fit, moments);
    for (int group = 0; group < system.groups().size(); group++) {
      all.addGroup(group);
    }
    all.addShared(system.club().effects(), EFFECTS);
    all.addShared(system.club().gains(), GAINS);
    return all.slope;
  }

  private void addShared(List<SharedEffect> shared, int parameter) {
    for (int i = 0; i < shared.size(); i++) {
      int number = parameter == EFFECTS ? system.border().effect(i) : system.border().gain(i);
      if (number >= 0) {
        double away = fit.point().border()[number] - shared.get(i).mean();
        double shift = moments.borderMean(number) - fit.point().border()[number];
        double second = moments.borderVariance(number) + away * away + 2 * away * shift;
        slope[parameter] += second * system.border().precision(number) - 1;
      }
    }
  }

  private void addGroup(int number) {
    ClubSystem.Group group = system.group(number);
    BlockGraph graph = group.part().graph();
    List<List<WalkPrior.Piece>> byNode = new ArrayList<>();
    for (int node = 0; node < graph.nodes(); node++) {
      byNode.add(new ArrayList<>());
    }
    for (WalkPrior.Piece piece : group.prior().pieces()) {
      byNode.get(firstNode(graph, piece.step())).add(piece);
    }
    double[] away = fit.settled(number);
    double[] shift = moments.mean(number).clone();
    double[] mean = group.prior().mean();
    for (int i = 0; i < away.length; i++) {
      shift[i] -= away[i];
      away[i] -= mean[i];
    }
    SelectedInverse.visit(
        fit.curvature().factor(number),
        moments.borderCovariance(),
        (node, covariances) ->
            byNode
                .get(node)
                .forEach(piece -> add(group.layout(), piece, covariances, away, shift)));
  }

  private int firstNode(BlockGraph graph, Step step) {
    int next = graph.nodeOf(step.next());
    return step.isStart() ? next : Math.min(next, graph.nodeOf(step.latent(1, 0)));
  }

  private void add(
      Layout layout,
      WalkPrior.Piece piece,
      SelectedInverse.Covariances covariances,
      double[] away,
      double[] shift) {
    Step step = piece.step();
    double[] at = step.sums(away, skills);
    double[] more = step.sums(shift, skills);
    if (step.isStart()) {
      double[][] second = new double[skills][skills];
      for (int s = 0; s < skills; s++) {
        for (int t = 0; t < skills; t++) {
          second[s][t] =
              covariance(step, covariances, s, t)
                  + at[s] * at[t]
                  + at[s] * more[t]
                  + more[s] * at[t];
        }
      }
      addStart(layout, piece, second, sum(at, more));
    } else {
      double trace = 0;
      for (int s = 0; s < skills; s++) {
        trace += covariance(step, covariances, s, s) + at[s] * at[s] + 2 * at[s] * more[s];
      }
      slope[WEEK] += trace * piece.walkPrecision() - skills;
    }
  }

  private static double[] sum(double[] x, double[] y) {
    double[] sum = x.clone();
    for (int i = 0; i < x.length; i++) {
      sum[i] += y[i];
    }
    return sum;
  }

  private static double covariance(
      Step step, SelectedInverse.Covariances covariances, int s, int t) {
    double sum = 0;
    for (int i = 0; i < step.members(); i++) {
      for (int j = 0; j < step.members(); j++) {
        double weight = step.weight(i, s) * step.weight(j, t);
        if (weight != 0) {
          sum += weight * covariances.of(step.latent(i, s), step.latent(j, t));
        }
      }
    }
    return sum;
  }

  private void addStart(
      Layout layout, WalkPrior.Piece piece, double[][] second, double[] expected) {
    Entrant entrant = layout.entrantOf(piece.step().next());
    double[][] q = piece.startPrecision();
    double[][] qe = product(q, second);
    double[][] bend = product(qe, q);
    double[] pull = new double[skills];
    double all = 0;
    double together = 0;
    double single = 0;
    for (int s = 0; s < skills; s++) {
      for (int t = 0; t < skills; t++) {
        double half = (bend[s][t] - q[s][t]) / 2;
        all += half;
        together += system.club().skills().together(s, t) ? half : 0;
        single += s == t ? half : 0;
        pull[s] += q[s][t] * expected[t];
      }
    }
    slope[LEVEL] += 2 * square(prior.levelSd()) * all;
    slope[GROUP] += 2 * square(prior.groupSd()) * together;
    slope[SKILL] += 2 * square(prior.skillSd()) * single;
    slope[WEEK] += 2 * square(prior.weeklySd()) * piece.step().weeks() * single;
    if (entrant.level().isPresent()) {
      for (double each : pull) {
        slope[STEP_OF_LEVEL] += each * prior.mean(entrant);
      }
    } else {
      slope[STEP_OF_LEVEL] += 2 * square(prior.levelStep()) * all;
    }
  }

  private static double square(double x) {
    return x * x;
  }

  private static double[][] product(double[][] a, double[][] b) {
    int size = a.length;
    double[][] product = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int k = 0; k < size; k++) {
        for (int j = 0; j < size; j++) {
          product[i][j] += a[i][k] * b[k][j];
        }
      }
    }
    return product;
  }
}
