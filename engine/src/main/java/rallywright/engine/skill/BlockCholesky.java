package rallywright.engine.skill;

import java.util.Arrays;
import java.util.Optional;

/**
 * The factor UᵀU of a positive definite {@link BlockMatrix}.
 *
 * <p>Method: multifrontal elimination. A stage (see {@link EliminationPlan}) gathers its own rows
 * and the updates of its children in a small dense front, eliminates its own latents there, four at
 * a time, and hands the rest to its parent. All work is done in runs of consecutive numbers, which
 * the virtual machine turns into vector instructions. With nodes in the order of weeks a front
 * holds each player of one connected group about once, so the cost is (player-weeks with games) ×
 * skills × (players of the group × skills)²: linear in games and weeks, cubic in the size of a
 * group whose members all play each other. Groups that never mix do not meet in a front except at
 * the shared effects, which come last (the border).
 *
 * <p>References: Duff and Reid, The multifrontal solution of indefinite sparse symmetric linear
 * equations, ACM TOMS 9 (1983); George and Liu, Computer Solution of Large Sparse Positive Definite
 * Systems (1981).
 */
final class BlockCholesky {
  private static final double[][] HANDED_ON = {};

  private final EliminationPlan plan;
  private final BlockGraph graph;
  private final double[][][] panels;
  private final int eliminated;
  private final Checkpoint checkpoint;

  private BlockCholesky(EliminationPlan plan, int kept, Checkpoint checkpoint) {
    this.plan = plan;
    this.checkpoint = checkpoint;
    this.graph = plan.graph();
    this.eliminated = plan.stages() - kept;
    panels = new double[plan.stages()][][];
  }

  /** The factor, or empty when the matrix is not positive definite. */
  static Optional<BlockCholesky> of(BlockMatrix matrix, EliminationPlan plan) {
    return of(matrix, plan, 0, Checkpoint.none());
  }

  /**
   * The factor of all but the last nodes, or empty when their matrix is not positive definite. What
   * is left for the last node, after the others are eliminated, is its {@link #remainder}.
   *
   * @param kept how many nodes at the end are not eliminated, 0 or 1; a section must start there
   * @param checkpoint a place at which a factor of the grown system may take up
   */
  static Optional<BlockCholesky> of(
      BlockMatrix matrix, EliminationPlan plan, int kept, Checkpoint checkpoint) {
    BlockCholesky factor = new BlockCholesky(plan, kept, checkpoint);
    return factor.run(matrix, 0, new double[plan.stages()][][])
        ? Optional.of(factor)
        : Optional.empty();
  }

  /**
   * The factor of a system that is an earlier one with more nodes at its end, taken up at the
   * earlier one's checkpoint: what stands before it is as it was.
   *
   * @param matrix of which only the rows from the checkpoint on are read
   * @param checkpoint the next place, not before the earlier one
   */
  static Optional<BlockCholesky> resumed(
      BlockMatrix matrix, EliminationPlan plan, BlockCholesky before, Checkpoint checkpoint) {
    int from = plan.stageOf(before.checkpoint.node());
    BlockCholesky factor = new BlockCholesky(plan, 1, checkpoint);
    System.arraycopy(before.panels, 0, factor.panels, 0, from);
    double[][][] updates = new double[plan.stages()][][];
    before.checkpoint.restore(updates);
    return factor.run(matrix, from, updates) ? Optional.of(factor) : Optional.empty();
  }

  Checkpoint checkpoint() {
    return checkpoint;
  }

  /** Eliminates from a stage on; false if the matrix is not positive definite. */
  private boolean run(BlockMatrix matrix, int from, double[][][] updates) {
    int[] position = new int[graph.nodes()];
    int place = checkpoint.isSet() ? plan.stageOf(checkpoint.node()) : -1;
    for (int stage = from; stage < plan.stages(); stage++) {
      if (stage == place) {
        keepWaiting(place, updates);
      }
      int size = plan.size(stage);
      int all = size + plan.width(stage);
      double[][] front = new double[all][all];
      plan.locate(stage, position);
      for (int node = plan.first(stage); node < plan.first(stage + 1); node++) {
        matrix.copyRows(node, front, position);
      }
      for (int child : plan.children(stage)) {
        receive(child, updates[child], front, position);
        updates[child] = HANDED_ON;
      }
      if (stage < eliminated && !eliminate(front, size)) {
        return false;
      }
      panels[stage] = Arrays.copyOf(front, size);
      updates[stage] = Arrays.copyOfRange(front, size, all);
    }
    return true;
  }

  private void keepWaiting(int place, double[][][] updates) {
    for (int stage = 0; stage < place; stage++) {
      if (plan.parent(stage) >= place) {
        checkpoint.keep(stage, updates[stage]);
      }
    }
  }

  /** Adds the update of a child, block by block, to the front of its parent. */
  private void receive(int child, double[][] update, double[][] front, int[] position) {
    int[] blocks = plan.front(child);
    int size = plan.size(child);
    int row = 0;
    for (int b = 0; b < blocks.length; b++) {
      for (int r = 0; r < graph.size(blocks[b]); r++, row++) {
        double[] from = update[row];
        double[] to = front[position[blocks[b]] + r];
        int at = size + row;
        for (int d = b; d < blocks.length; d++) {
          int skip = d == b ? r : 0;
          int end = at + graph.size(blocks[d]) - skip;
          int shift = position[blocks[d]] + skip - at;
          for (; at < end; at++) {
            to[shift + at] += from[at];
          }
        }
      }
    }
  }

  /**
   * Turns the first rows of a front into rows of U and takes what they explain out of the others,
   * upper triangle; false if a pivot is not positive.
   */
  private static boolean eliminate(double[][] front, int size) {
    double[] factors = new double[Runs.TOGETHER];
    for (int first = 0; first < size; first += Runs.TOGETHER) {
      int end = Math.min(size, first + Runs.TOGETHER);
      if (!pivots(front, first, end)) {
        return false;
      }
      for (int r = end; r < front.length; r++) {
        if (end - first == Runs.TOGETHER) {
          for (int k = 0; k < Runs.TOGETHER; k++) {
            factors[k] = front[first + k][r];
          }
          Runs.subtractFour(front[r], r, front, first, factors);
        } else {
          for (int c = first; c < end; c++) {
            Runs.subtract(front[r], r, front[c], front[c][r]);
          }
        }
      }
    }
    return true;
  }

  /** Turns a few rows, from which the earlier ones are taken out, into rows of U. */
  private static boolean pivots(double[][] front, int first, int end) {
    for (int c = first; c < end; c++) {
      double[] row = front[c];
      for (int k = first; k < c; k++) {
        Runs.subtract(row, c, front[k], front[k][c]);
      }
      if (!(row[c] > 0 && row[c] < Double.POSITIVE_INFINITY)) {
        return false;
      }
      double inverse = 1 / Math.sqrt(row[c]);
      for (int s = c; s < row.length; s++) {
        row[s] *= inverse;
      }
    }
    return true;
  }

  /** The symmetric matrix left for the last node; empty where all were eliminated. */
  double[][] remainder() {
    if (eliminated == plan.stages()) {
      return new double[0][];
    }
    double[][] left = new double[panels[eliminated].length][];
    for (int i = 0; i < left.length; i++) {
      left[i] = panels[eliminated][i].clone();
      for (int j = 0; j < i; j++) {
        left[i][j] = left[j][i];
      }
    }
    return left;
  }

  /** How many stages were eliminated. */
  int eliminated() {
    return eliminated;
  }

  /** log det of the matrix of the eliminated stages. */
  double logDet() {
    double sum = 0;
    for (int stage = 0; stage < eliminated; stage++) {
      for (int c = 0; c < panels[stage].length; c++) {
        sum += Math.log(panels[stage][c][c]);
      }
    }
    return 2 * sum;
  }

  /** Solves (matrix) x = b; b is left as it is. All nodes must be eliminated. */
  double[] solve(double[] b) {
    double[] x = b.clone();
    forward(x);
    backward(x);
    return x;
  }

  /** First half of a solve, in place: what stands at kept nodes is then what is left for them. */
  void forward(double[] x) {
    for (int stage = 0; stage < eliminated; stage++) {
      forward(stage, x);
    }
  }

  /** Second half of a solve, in place: what stands at kept nodes is their solution. */
  void backward(double[] x) {
    for (int stage = eliminated - 1; stage >= 0; stage--) {
      backward(stage, x);
    }
  }

  /**
   * U⁻ᵀ b: the covariance bᵀ(matrix)⁻¹c is the product of two such halves. Only the stages on the
   * way from those that b touches to the root take part, few for sums over recent weeks.
   */
  double[] half(double[] b) {
    double[] x = b.clone();
    boolean[] touched = new boolean[plan.stages()];
    for (int i = 0; i < b.length; i++) {
      touched[plan.stageOf(graph.nodeOf(i))] |= b[i] != 0;
    }
    for (int stage = 0; stage < eliminated; stage++) {
      if (touched[stage]) {
        forward(stage, x);
        if (plan.parent(stage) >= 0) {
          touched[plan.parent(stage)] = true;
        }
      }
    }
    return x;
  }

  private void forward(int stage, double[] x) {
    double[][] panel = panels[stage];
    double[] front = gather(stage, x);
    double[] factors = new double[Runs.TOGETHER];
    for (int first = 0; first < panel.length; first += Runs.TOGETHER) {
      int end = Math.min(panel.length, first + Runs.TOGETHER);
      for (int c = first; c < end; c++) {
        double value = front[c] / panel[c][c];
        front[c] = value;
        factors[c - first] = value;
        for (int s = c + 1; s < end; s++) {
          front[s] -= value * panel[c][s];
        }
      }
      if (end - first == Runs.TOGETHER) {
        Runs.subtractFour(front, end, panel, first, factors);
      } else {
        for (int c = first; c < end; c++) {
          Runs.subtract(front, end, panel[c], front[c]);
        }
      }
    }
    scatter(stage, front, x);
  }

  private void backward(int stage, double[] x) {
    double[] front = gather(stage, x);
    int size = panels[stage].length;
    for (int c = size - 1; c >= 0; c--) {
      double[] row = panels[stage][c];
      front[c] = (front[c] - Runs.dot(row, front, c + 1)) / row[c];
    }
    System.arraycopy(front, 0, x, graph.start(plan.first(stage)), size);
  }

  private double[] gather(int stage, double[] x) {
    int at = plan.size(stage);
    double[] front = new double[at + plan.width(stage)];
    System.arraycopy(x, graph.start(plan.first(stage)), front, 0, at);
    for (int other : plan.front(stage)) {
      System.arraycopy(x, graph.start(other), front, at, graph.size(other));
      at += graph.size(other);
    }
    return front;
  }

  private void scatter(int stage, double[] front, double[] x) {
    int at = plan.size(stage);
    System.arraycopy(front, 0, x, graph.start(plan.first(stage)), at);
    for (int other : plan.front(stage)) {
      System.arraycopy(front, at, x, graph.start(other), graph.size(other));
      at += graph.size(other);
    }
  }

  EliminationPlan plan() {
    return plan;
  }

  /** The rows of U of a stage, each as long as its front; not to be changed. */
  double[][] panel(int stage) {
    return panels[stage];
  }
}
