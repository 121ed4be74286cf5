package rallywright.engine.skill;

import java.util.Optional;

/**
 * The factor UᵀU of a positive definite {@link BlockMatrix}.
 *
 * <p>Method: multifrontal elimination. A node gathers its own rows and the updates of its children
 * in a small dense front, eliminates its own latents there, and hands the rest to its parent. All
 * work is done in runs of consecutive numbers, which the virtual machine turns into vector
 * instructions. With nodes in the order of weeks a front holds each player of one connected group
 * about once, so the cost is (player-weeks with games) × skills × (players of the group × skills)²:
 * linear in games and weeks, cubic in the size of a group whose members all play each other. Groups
 * that never mix do not meet in a front except at the shared effects, which come last (the border).
 *
 * <p>References: Duff and Reid, The multifrontal solution of indefinite sparse symmetric linear
 * equations, ACM TOMS 9 (1983); George and Liu, Computer Solution of Large Sparse Positive Definite
 * Systems (1981).
 */
final class BlockCholesky {
  private final EliminationPlan plan;
  private final BlockGraph graph;
  private final double[][] panels;
  private final int eliminated;
  private final Checkpoint checkpoint;

  private BlockCholesky(EliminationPlan plan, int kept, Checkpoint checkpoint) {
    this.plan = plan;
    this.checkpoint = checkpoint;
    this.graph = plan.graph();
    this.eliminated = graph.nodes() - kept;
    panels = new double[graph.nodes()][];
  }

  /** The factor, or empty when the matrix is not positive definite. */
  static Optional<BlockCholesky> of(BlockMatrix matrix, EliminationPlan plan) {
    return of(matrix, plan, 0);
  }

  /**
   * The factor of all but the last nodes, or empty when their matrix is not positive definite. What
   * is left for the last node, after the others are eliminated, is its {@link #remainder}.
   *
   * @param kept how many nodes at the end are not eliminated, 0 or 1
   */
  static Optional<BlockCholesky> of(BlockMatrix matrix, EliminationPlan plan, int kept) {
    return of(matrix, plan, kept, Checkpoint.none());
  }

  /** The same, with a place at which a factor of the grown system may take up. */
  static Optional<BlockCholesky> of(
      BlockMatrix matrix, EliminationPlan plan, int kept, Checkpoint checkpoint) {
    BlockCholesky factor = new BlockCholesky(plan, kept, checkpoint);
    return factor.run(matrix, 0, new double[factor.graph.nodes()][])
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
    int from = before.checkpoint.node();
    BlockCholesky factor = new BlockCholesky(plan, 1, checkpoint);
    System.arraycopy(before.panels, 0, factor.panels, 0, from);
    double[][] updates = new double[factor.graph.nodes()][];
    before.checkpoint.restore(updates);
    return factor.run(matrix, from, updates) ? Optional.of(factor) : Optional.empty();
  }

  Checkpoint checkpoint() {
    return checkpoint;
  }

  /** Eliminates from a node on; false if the matrix is not positive definite. */
  private boolean run(BlockMatrix matrix, int from, double[][] updates) {
    int[] position = new int[graph.nodes()];
    for (int node = from; node < graph.nodes(); node++) {
      if (node == checkpoint.node()) {
        keepWaiting(node, updates);
      }
      Front front = new Front(graph.size(node), plan.width(node));
      plan.locate(node, position);
      matrix.copyRows(node, front.panel, front.size + front.width, position);
      for (int child : plan.children(node)) {
        receive(child, updates[child], front, position);
        updates[child] = new double[0];
      }
      if (node < eliminated && !eliminate(front.panel, front.size, front.size + front.width)) {
        return false;
      }
      subtractProducts(front.panel, front.size, front.update, front.width);
      panels[node] = front.panel;
      updates[node] = front.update;
    }
    return true;
  }

  private void keepWaiting(int place, double[][] updates) {
    for (int node = 0; node < place; node++) {
      int[] front = plan.front(node);
      if (front.length > 0 && front[0] >= place) {
        checkpoint.keep(node, updates[node]);
      }
    }
  }

  /** The dense front of one node: its own rows, and what it will hand to its parent. */
  private static final class Front {
    private final int size;
    private final int width;
    private final double[] panel;
    private final double[] update;

    private Front(int size, int width) {
      this.size = size;
      this.width = width;
      panel = new double[size * (size + width)];
      update = new double[width * width];
    }
  }

  /** Adds the update of a child, block by block, to the front of its parent. */
  private void receive(int child, double[] update, Front front, int[] position) {
    int[] blocks = plan.front(child);
    int width = plan.width(child);
    int row = 0;
    for (int b = 0; b < blocks.length; b++) {
      for (int r = 0; r < graph.size(blocks[b]); r++, row++) {
        int target = position[blocks[b]] + r;
        boolean own = target < front.size;
        double[] to = own ? front.panel : front.update;
        int base =
            own
                ? target * (front.size + front.width)
                : (target - front.size) * front.width - front.size;
        int from = row;
        for (int d = b; d < blocks.length; d++) {
          int skip = d == b ? r : 0;
          int run = graph.size(blocks[d]) - skip;
          int shift = base + position[blocks[d]] + skip - from;
          for (int s = from; s < from + run; s++) {
            to[shift + s] += update[row * width + s];
          }
          from += run;
        }
      }
    }
  }

  /** Turns the own rows of the front into rows of U; false if a pivot is not positive. */
  private static boolean eliminate(double[] panel, int size, int all) {
    for (int c = 0; c < size; c++) {
      double pivot = panel[c * all + c];
      if (!(pivot > 0 && pivot < Double.POSITIVE_INFINITY)) {
        return false;
      }
      double inverse = 1 / Math.sqrt(pivot);
      for (int s = c; s < all; s++) {
        panel[c * all + s] *= inverse;
      }
      for (int r = c + 1; r < size; r++) {
        double x = panel[c * all + r];
        for (int s = r; s < all; s++) {
          panel[r * all + s] -= x * panel[c * all + s];
        }
      }
    }
    return true;
  }

  /**
   * update −= (later part of panel)ᵀ (later part of panel), upper triangle, four rows at a time.
   */
  private static void subtractProducts(double[] panel, int size, double[] update, int width) {
    int all = size + width;
    for (int r = 0; r < width; r++) {
      int to = r * width;
      int c = 0;
      for (; c + 3 < size; c += 4) {
        int at = c * all + size;
        double[] x = {
          panel[at + r], panel[at + all + r], panel[at + 2 * all + r], panel[at + 3 * all + r]
        };
        Runs.subtractFour(update, to, panel, new int[] {at, all, r, width}, x);
      }
      for (; c < size; c++) {
        int at = c * all + size;
        Runs.subtract(update, to, panel, new int[] {at, r, width}, panel[at + r]);
      }
    }
  }

  /** The symmetric matrix left for the last node; empty where all were eliminated. */
  double[][] remainder() {
    if (eliminated == graph.nodes()) {
      return new double[0][];
    }
    int size = graph.size(eliminated);
    double[][] left = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = i; j < size; j++) {
        left[i][j] = panels[eliminated][i * size + j];
        left[j][i] = left[i][j];
      }
    }
    return left;
  }

  /** How many nodes were eliminated. */
  int eliminated() {
    return eliminated;
  }

  /** log det of the matrix of the eliminated nodes. */
  double logDet() {
    double sum = 0;
    for (int node = 0; node < eliminated; node++) {
      int all = graph.size(node) + plan.width(node);
      for (int c = 0; c < graph.size(node); c++) {
        sum += Math.log(panels[node][c * all + c]);
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
    double[] front = new double[graph.latents()];
    for (int node = 0; node < eliminated; node++) {
      forward(node, x, front);
    }
  }

  /** Second half of a solve, in place: what stands at kept nodes is their solution. */
  void backward(double[] x) {
    double[] front = new double[graph.latents()];
    for (int node = eliminated - 1; node >= 0; node--) {
      backward(node, x, front);
    }
  }

  /**
   * U⁻ᵀ b: the covariance bᵀ(matrix)⁻¹c is the product of two such halves. Only the nodes on the
   * way from those that b touches to the root take part, few for sums over recent weeks.
   */
  double[] half(double[] b) {
    double[] x = b.clone();
    double[] front = new double[graph.latents()];
    boolean[] touched = new boolean[graph.nodes()];
    for (int i = 0; i < b.length; i++) {
      touched[graph.nodeOf(i)] |= b[i] != 0;
    }
    for (int node = 0; node < eliminated; node++) {
      if (touched[node]) {
        forward(node, x, front);
        if (plan.front(node).length > 0) {
          touched[plan.front(node)[0]] = true;
        }
      }
    }
    return x;
  }

  private void forward(int node, double[] x, double[] front) {
    int size = graph.size(node);
    int all = size + plan.width(node);
    gather(node, x, front);
    for (int c = 0; c < size; c++) {
      double value = front[c] / panels[node][c * all + c];
      front[c] = value;
      if (value != 0) {
        for (int s = c + 1; s < all; s++) {
          front[s] -= value * panels[node][c * all + s];
        }
      }
    }
    scatter(node, front, x);
  }

  private void backward(int node, double[] x, double[] front) {
    int size = graph.size(node);
    int all = size + plan.width(node);
    gather(node, x, front);
    for (int c = size - 1; c >= 0; c--) {
      double value = front[c];
      for (int s = c + 1; s < all; s++) {
        value -= panels[node][c * all + s] * front[s];
      }
      front[c] = value / panels[node][c * all + c];
    }
    System.arraycopy(front, 0, x, graph.start(node), size);
  }

  private void gather(int node, double[] x, double[] front) {
    System.arraycopy(x, graph.start(node), front, 0, graph.size(node));
    int at = graph.size(node);
    for (int other : plan.front(node)) {
      System.arraycopy(x, graph.start(other), front, at, graph.size(other));
      at += graph.size(other);
    }
  }

  private void scatter(int node, double[] front, double[] x) {
    System.arraycopy(front, 0, x, graph.start(node), graph.size(node));
    int at = graph.size(node);
    for (int other : plan.front(node)) {
      System.arraycopy(front, at, x, graph.start(other), graph.size(other));
      at += graph.size(other);
    }
  }

  EliminationPlan plan() {
    return plan;
  }

  /** The rows of U of a node: size × (size + width), row by row. */
  double[] panel(int node) {
    return panels[node];
  }
}
