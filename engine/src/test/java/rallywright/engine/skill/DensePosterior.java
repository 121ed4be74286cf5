package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;
import rallywright.engine.score.Side;

/**
 * The posterior of a simulated club from the definition: densities of the random walk step by step,
 * scores played rally by rally, derivatives by difference quotients, dense matrices.
 */
final class DensePosterior {
  private static final double STEP = 1e-4;

  private final SimulatedClub club;
  private final List<SkillSum> sums = new ArrayList<>();
  private final int skills;
  private final int weeks;
  private final double[][][][] effective;

  DensePosterior(SimulatedClub club, int weeks) {
    this.club = club;
    this.weeks = weeks;
    skills = club.club.skills().skills();
    for (int player = 0; player < club.club.entrants().size(); player++) {
      for (int week = 0; week < weeks; week++) {
        for (int skill = 0; skill < skills; skill++) {
          sums.add(SkillSum.skill(new SkillSum.Key(player, skill, week)));
        }
      }
    }
    for (int effect = 0; effect < club.club.effects().size(); effect++) {
      sums.add(SkillSum.effect(effect));
    }
    for (int gain = 0; gain < club.club.gains().size(); gain++) {
      sums.add(SkillSum.gain(gain));
    }
    effective = new double[club.club.entrants().size()][weeks][club.gains.length][skills];
    club.evidence.stream()
        .filter(Practice.class::isInstance)
        .map(Practice.class::cast)
        .forEach(this::add);
  }

  SkillSum sum(int i) {
    return sums.get(i);
  }

  double[] modes(Posterior posterior) {
    return sums.stream().mapToDouble(sum -> posterior.mode(sum).mean()).toArray();
  }

  double logPosterior(double[] x) {
    double sum = 0;
    for (int player = 0; player < club.club.entrants().size(); player++) {
      sum += logStart(x, player);
      for (int i = 0; i < (weeks - 1) * skills; i++) {
        int at = player * weeks * skills + i;
        double pushed = pushed(x, player, i / skills, i % skills);
        sum += logNormal(x[at + skills] - x[at] - pushed, SimulatedClub.PRIOR.weeklySd());
      }
    }
    List<SharedEffect> all = new ArrayList<>(club.club.effects());
    all.addAll(club.club.gains());
    for (int i = 0; i < all.size(); i++) {
      SharedEffect shared = all.get(i);
      sum += logNormal(x[x.length - all.size() + i] - shared.mean(), shared.sd());
    }
    for (Evidence evidence : club.evidence) {
      sum += evidence instanceof Practice ? 0 : logLikelihood(evidence, x);
    }
    return sum;
  }

  /** What the practice of a week brings. */
  private double pushed(double[] x, int player, int week, int skill) {
    double sum = 0;
    for (int gain = 0; gain < club.gains.length; gain++) {
      sum += x[x.length - club.gains.length + gain] * effective[player][week][gain][skill];
    }
    return sum;
  }

  /** Effective minutes by the definition M (1 − e^(−m/M)) with M = 25, times the load. */
  private void add(Practice practice) {
    double minutes = 25 * (1 - Math.exp(-practice.minutes() / 25));
    for (int skill = 0; skill < skills; skill++) {
      effective[practice.player()][practice.week()][practice.gain()][skill] +=
          minutes * practice.load().of(skill);
    }
  }

  private static double logNormal(double away, double sd) {
    return -0.5 * Math.log(2 * Math.PI) - Math.log(sd) - away * away / (2 * sd * sd);
  }

  private double logStart(double[] x, int player) {
    SkillPrior prior = SimulatedClub.PRIOR;
    Entrant entrant = club.club.entrants().get(player);
    boolean known = entrant.level().isPresent();
    double mean = known ? 0.45 * (entrant.level().getAsDouble() - 3.5) / 0.5 : 0;
    double[][] s = new double[skills][skills];
    for (int i = 0; i < skills; i++) {
      for (int j = 0; j < skills; j++) {
        s[i][j] = Math.pow(prior.levelSd(), 2) + (known ? 0 : 0.45 * 0.45);
        s[i][j] += i / 2 == j / 2 ? Math.pow(prior.groupSd(), 2) : 0;
        s[i][j] += i == j ? Math.pow(prior.skillSd(), 2) : 0;
      }
    }
    double[][] inverse = inverse(s);
    double square = 0;
    for (int i = 0; i < skills; i++) {
      for (int j = 0; j < skills; j++) {
        int at = player * weeks * skills;
        square += (x[at + i] - mean) * inverse[i][j] * (x[at + j] - mean);
      }
    }
    return -0.5 * (skills * Math.log(2 * Math.PI) + logDet(s) + square);
  }

  private double eta(SkillSum sum, double[] x) {
    double[] eta = {0};
    sum.forEachSkill(
        (key, weight) ->
            eta[0] += weight * x[(key.player() * weeks + key.week()) * skills + key.skill()]);
    int effects = x.length - club.gains.length - club.club.effects().size();
    sum.forEachEffect((effect, weight) -> eta[0] += weight * x[effects + effect]);
    return eta[0];
  }

  private double logLikelihood(Evidence evidence, double[] x) {
    if (evidence instanceof YardstickResult result) {
      double p = 1 / (1 + Math.exp(-eta(result.predictor(), x)));
      return result.hits() * Math.log(p) + (result.balls() - result.hits()) * Math.log(1 - p);
    }
    Game game = (Game) evidence;
    double pA =
        1 / (1 + Math.exp(-eta(game.contest().serverEdge(game.sides(), game.week(), A), x)));
    double pB =
        1 / (1 + Math.exp(-eta(game.contest().serverEdge(game.sides(), game.week(), B), x)));
    if (game.result() instanceof RalliesWon won) {
      return won.a() * Math.log(pA) + won.b() * Math.log(1 - pA);
    }
    if (game.result() instanceof RalliesByServer log) {
      return log.aServedAndWon() * Math.log(pA)
          + (log.aServed() - log.aServedAndWon()) * Math.log(1 - pA)
          + log.bServedAndWon() * Math.log(pB)
          + (log.bServed() - log.bServedAndWon()) * Math.log(1 - pB);
    }
    ScorePath path = (ScorePath) game.result();
    MassByRallies mass = new MassByRallies(path, pA, pB);
    for (int rally = 0; rally < 250; rally++) {
      mass.play();
    }
    return Math.log(mass.at(path.end()));
  }

  private static final Side A = Side.A;
  private static final Side B = Side.B;

  double[] gradient(double[] x) {
    double[] gradient = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      gradient[i] = (moved(x, i, STEP) - moved(x, i, -STEP)) / (2 * STEP);
    }
    return gradient;
  }

  private double moved(double[] x, int i, double by) {
    double[] there = x.clone();
    there[i] += by;
    return logPosterior(there);
  }

  double[][] negativeHessian(double[] x) {
    double[][] hessian = new double[x.length][x.length];
    double h = 10 * STEP;
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j <= i; j++) {
        double[] up = x.clone();
        double[] down = x.clone();
        up[i] += h;
        down[i] -= h;
        double second = moved(up, j, h) - moved(up, j, -h) - moved(down, j, h) + moved(down, j, -h);
        hessian[i][j] = -second / (4 * h * h);
        hessian[j][i] = hessian[i][j];
      }
    }
    return hessian;
  }

  /** By Gauss and Jordan; the matrices here need no pivoting, being positive definite. */
  static double[][] inverse(double[][] matrix) {
    int n = matrix.length;
    double[][] a = new double[n][2 * n];
    for (int i = 0; i < n; i++) {
      System.arraycopy(matrix[i], 0, a[i], 0, n);
      a[i][n + i] = 1;
    }
    for (int c = 0; c < n; c++) {
      double pivot = a[c][c];
      for (int j = 0; j < 2 * n; j++) {
        a[c][j] /= pivot;
      }
      for (int r = 0; r < n; r++) {
        double factor = r == c ? 0 : a[r][c];
        for (int j = 0; j < 2 * n; j++) {
          a[r][j] -= factor * a[c][j];
        }
      }
    }
    double[][] inverse = new double[n][];
    for (int i = 0; i < n; i++) {
      inverse[i] = java.util.Arrays.copyOfRange(a[i], n, 2 * n);
    }
    return inverse;
  }

  /** By elimination. */
  static double logDet(double[][] matrix) {
    int n = matrix.length;
    double[][] a = new double[n][];
    for (int i = 0; i < n; i++) {
      a[i] = matrix[i].clone();
    }
    double sum = 0;
    for (int c = 0; c < n; c++) {
      sum += Math.log(a[c][c]);
      for (int r = c + 1; r < n; r++) {
        double factor = a[r][c] / a[c][c];
        for (int j = c; j < n; j++) {
          a[r][j] -= factor * a[c][j];
        }
      }
    }
    return sum;
  }
}
