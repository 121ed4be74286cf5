package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;

/**
 * The prior of the players of one {@link Layout}, given the shared effects: for each player the
 * start of the walk and its steps. It is kept as the list of steps, which needs far less room than
 * its precision.
 */
final class WalkPrior implements Prior {

  /** A step and the precision of its increment: a matrix at the start, a number after. */
  static final class Piece {
    private final Step step;
    private final double[][] startPrecision;
    private final double walkPrecision;

    private Piece(Step step, double[][] startPrecision, double walkPrecision) {
      this.step = step;
      this.startPrecision = startPrecision;
      this.walkPrecision = walkPrecision;
    }

    Step step() {
      return step;
    }

    double[][] startPrecision() {
      return startPrecision;
    }

    double walkPrecision() {
      return walkPrecision;
    }
  }

  private final Layout layout;
  private final SkillPrior prior;
  private final int skills;
  private final double[] mean;
  private final int[] owners;
  private final List<Piece> pieces = new ArrayList<>();
  private final Map<Integer, Dense> starts = new HashMap<>();
  private double logDet;

  WalkPrior(Layout layout, SkillPrior prior) {
    this.layout = layout;
    this.prior = prior;
    skills = layout.club().skills().skills();
    mean = new double[layout.graph().latents()];
    owners = new int[mean.length];
    layout.border().copyMeans(mean, layout.own());
    layout.players().forEach(this::addPlayer);
  }

  private void addPlayer(int player) {
    Entrant entrant = layout.club().entrants().get(player);
    double[] believed = new double[skills];
    Arrays.fill(believed, prior.mean(entrant));
    int before = -1;
    int weekBefore = entrant.firstWeek();
    for (Map.Entry<Integer, Integer> entry : layout.chain(player).entrySet()) {
      int start = layout.graph().start(entry.getValue());
      int weeks = entry.getKey() - weekBefore;
      NavigableMap<Integer, double[]> practised =
          layout.drift().between(player, weekBefore, entry.getKey());
      addDrift(practised, believed);
      System.arraycopy(believed, 0, mean, start, skills);
      Arrays.fill(owners, start, start + skills, player);
      add(new Step(layout, new int[] {before, start, weeks}, practised), entrant);
      before = start;
      weekBefore = entry.getKey();
    }
  }

  private void addDrift(NavigableMap<Integer, double[]> practised, double[] believed) {
    practised.forEach(
        (gain, minutes) -> {
          for (int skill = 0; skill < skills; skill++) {
            believed[skill] += layout.club().gains().get(gain).mean() * minutes[skill];
          }
        });
  }

  private void add(Step step, Entrant entrant) {
    if (step.isStart()) {
      Dense covariance = start(entrant, step.weeks());
      pieces.add(new Piece(step, covariance.inverse(), 0));
      logDet -= covariance.logDet();
    } else {
      double walk = 1 / (prior.weeklySd() * prior.weeklySd() * step.weeks());
      pieces.add(new Piece(step, new double[0][], walk));
      logDet += skills * Math.log(walk);
    }
  }

  /** Entrants with a level start with one covariance, those without with another. */
  private Dense start(Entrant entrant, int weeks) {
    int key = 2 * weeks + (entrant.level().isPresent() ? 1 : 0);
    return starts.computeIfAbsent(
        key, each -> Dense.of(prior.covariance(entrant, layout.club().skills(), weeks)));
  }

  List<Piece> pieces() {
    return pieces;
  }

  @Override
  public BlockGraph graph() {
    return layout.graph();
  }

  @Override
  public int[] owners() {
    return owners.clone();
  }

  @Override
  public double[] mean() {
    return mean.clone();
  }

  @Override
  public double logDensity(double[] x, double[] gradient) {
    double[] away = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      away[i] = x[i] - mean[i];
    }
    double square = 0;
    for (Piece piece : pieces) {
      double[] sums = piece.step().sums(away, skills);
      double[] pull = times(piece, sums);
      for (int skill = 0; skill < skills; skill++) {
        square += sums[skill] * pull[skill];
      }
      piece.step().addTranspose(pull, -1, gradient);
    }
    return logDet / 2 - square / 2;
  }

  private double[] times(Piece piece, double[] sums) {
    double[] product = new double[skills];
    if (!piece.step().isStart()) {
      for (int s = 0; s < skills; s++) {
        product[s] = piece.walkPrecision() * sums[s];
      }
      return product;
    }
    for (int s = 0; s < skills; s++) {
      for (int t = 0; t < skills; t++) {
        product[s] += piece.startPrecision()[s][t] * sums[t];
      }
    }
    return product;
  }

  @Override
  public void addProduct(double[] vector, double[] product) {
    for (Piece piece : pieces) {
      piece.step().addTranspose(times(piece, piece.step().sums(vector, skills)), 1, product);
    }
  }

  @Override
  public void addPrecision(BlockMatrix matrix) {
    for (Piece piece : pieces) {
      for (int s = 0; s < skills; s++) {
        if (piece.step().isStart()) {
          for (int t = 0; t < skills; t++) {
            piece.step().addPair(matrix, s, t, piece.startPrecision()[s][t]);
          }
        } else {
          piece.step().addPair(matrix, s, s, piece.walkPrecision());
        }
      }
    }
  }
}
