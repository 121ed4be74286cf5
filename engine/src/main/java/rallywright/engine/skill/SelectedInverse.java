package rallywright.engine.skill;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * The entries of the inverse matrix that lie in the fronts of its {@link BlockCholesky}: all
 * variances, and the covariances of latents that share an evidence row.
 *
 * <p>Method: from the last node to the first. With U the rows of a node, split into its own part
 * and the rest of the front R, and G = U_own⁻¹ U_R: Σ_own,R = −G Σ_RR and Σ_own = (U_ownᵀ U_own)⁻¹
 * − Σ_own,R Gᵀ; Σ_RR stands in the front of the parent. A front is kept only until its children are
 * done. Twice the cost of the factorisation.
 *
 * <p>Reference: Takahashi, Fagan and Chin, Formation of a sparse bus impedance matrix, 8th PICA
 * Conference (1973).
 */
final class SelectedInverse {
  /** Receives the covariances within the front of one node, each node once. */
  interface Visitor {
    void visit(int node, Covariances covariances);
  }

  /** Covariances between latents of one front. */
  final class Covariances {
    private final double[] sigma;
    private final int all;

    private Covariances(double[] sigma, int all) {
      this.sigma = sigma;
      this.all = all;
    }

    double of(int latent, int other) {
      return sigma[local(latent) * all + local(other)];
    }

    private int local(int latent) {
      int node = graph.nodeOf(latent);
      return position[node] + latent - graph.start(node);
    }
  }

  /** A node whose turn has come, with the finished front of its parent. */
  private static final class Task {
    private final int node;
    private final int parent;
    private final double[] parentSigma;

    private Task(int node, int parent, double[] parentSigma) {
      this.node = node;
      this.parent = parent;
      this.parentSigma = parentSigma;
    }
  }

  private final BlockCholesky factor;
  private final EliminationPlan plan;
  private final BlockGraph graph;
  private final int[] position;
  private final double[][] kept;

  private SelectedInverse(BlockCholesky factor, double[][] kept) {
    this.factor = factor;
    this.kept = kept;
    this.plan = factor.plan();
    this.graph = plan.graph();
    this.position = new int[graph.nodes()];
  }

  /**
   * Visits each node once with the covariances of its front.
   *
   * @param kept the covariances of the node that was not eliminated; empty where there is none
   */
  static void visit(BlockCholesky factor, double[][] kept, Visitor visitor) {
    SelectedInverse inverse = new SelectedInverse(factor, kept);
    Deque<Task> tasks = new ArrayDeque<>();
    for (int root : inverse.plan.roots()) {
      tasks.push(new Task(root, -1, new double[0]));
    }
    Comparator<Integer> largestFirst =
        Comparator.<Integer>comparingInt(inverse.plan::width).reversed();
    while (!tasks.isEmpty()) {
      Task task = tasks.pop();
      double[] sigma = inverse.front(task);
      int all = inverse.graph.size(task.node) + inverse.plan.width(task.node);
      inverse.plan.locate(task.node, inverse.position);
      visitor.visit(task.node, inverse.new Covariances(sigma, all));
      List<Integer> children = inverse.plan.children(task.node);
      children.stream()
          .sorted(largestFirst)
          .forEach(child -> tasks.push(new Task(child, task.node, sigma)));
    }
  }

  /** The full symmetric covariance of the front of the task's node. */
  private double[] front(Task task) {
    int size = graph.size(task.node);
    int width = plan.width(task.node);
    int all = size + width;
    double[] sigma = new double[all * all];
    if (task.node >= factor.eliminated()) {
      for (int i = 0; i < size; i++) {
        System.arraycopy(kept[i], 0, sigma, i * size, size);
      }
      return sigma;
    }
    copyRest(task, sigma, all);
    double[] own = inverseOfOwn(task.node, size, all);
    double[] g = gains(own, factor.panel(task.node), size, width);
    double[] cross = new double[size * width];
    multiplyRest(g, sigma, cross, size);
    for (int c = 0; c < size; c++) {
      for (int s = 0; s < width; s++) {
        sigma[c * all + size + s] = cross[c * width + s];
        sigma[(size + s) * all + c] = cross[c * width + s];
      }
      for (int d = 0; d < size; d++) {
        double value = 0;
        for (int k = Math.max(c, d); k < size; k++) {
          value += own[c * size + k] * own[d * size + k];
        }
        for (int s = 0; s < width; s++) {
          value -= cross[c * width + s] * g[d * width + s];
        }
        sigma[c * all + d] = value;
      }
    }
    return sigma;
  }

  /** Copies Σ_RR from the front of the parent. */
  private void copyRest(Task task, double[] sigma, int all) {
    if (task.parent < 0) {
      return;
    }
    plan.locate(task.parent, position);
    int parentAll = graph.size(task.parent) + plan.width(task.parent);
    int[] blocks = plan.front(task.node);
    int row = graph.size(task.node);
    for (int block : blocks) {
      for (int r = 0; r < graph.size(block); r++, row++) {
        int from = (position[block] + r) * parentAll;
        int to = row * all + graph.size(task.node);
        for (int other : blocks) {
          int run = graph.size(other);
          System.arraycopy(task.parentSigma, from + position[other], sigma, to, run);
          to += run;
        }
      }
    }
  }

  /** U_own⁻¹, upper triangular. */
  private double[] inverseOfOwn(int node, int size, int all) {
    double[] u = factor.panel(node);
    double[] inverse = new double[size * size];
    for (int column = 0; column < size; column++) {
      for (int row = column; row >= 0; row--) {
        double value = row == column ? 1 : 0;
        for (int k = row + 1; k <= column; k++) {
          value -= u[row * all + k] * inverse[k * size + column];
        }
        inverse[row * size + column] = value / u[row * all + row];
      }
    }
    return inverse;
  }

  /** G = U_own⁻¹ U_R, size × width. */
  private static double[] gains(double[] own, double[] panel, int size, int width) {
    double[] g = new double[size * width];
    for (int c = 0; c < size; c++) {
      for (int k = c; k < size; k++) {
        int from = k * (size + width) + size;
        Runs.subtract(g, c * width, panel, new int[] {from, 0, width}, -own[c * size + k]);
      }
    }
    return g;
  }

  /** cross = −G Σ_RR, four rows of Σ_RR at a time. */
  private static void multiplyRest(double[] g, double[] sigma, double[] cross, int size) {
    int width = g.length / size;
    int all = size + width;
    int r = 0;
    for (; r + 3 < width; r += 4) {
      int at = (size + r) * all + size;
      for (int c = 0; c < size; c++) {
        double[] x = Arrays.copyOfRange(g, c * width + r, c * width + r + 4);
        Runs.subtractFour(cross, c * width, sigma, new int[] {at, all, 0, width}, x);
      }
    }
    for (; r < width; r++) {
      int at = (size + r) * all + size;
      for (int c = 0; c < size; c++) {
        Runs.subtract(cross, c * width, sigma, new int[] {at, 0, width}, g[c * width + r]);
      }
    }
  }
}
