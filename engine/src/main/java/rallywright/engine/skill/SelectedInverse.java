package rallywright.engine.skill;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * The entries of the inverse matrix that lie in the fronts of its {@link BlockCholesky}: all
 * variances, and the covariances of latents that share an evidence row.
 *
 * <p>Method: from the last row of U to the first. With u the row of a latent c: Σ_c,s = −Σ_k u_k
 * Σ_k,s / u_c over the later latents k of its front, and Σ_c,c = (1/u_c − Σ_k u_k Σ_c,k) / u_c;
 * what lies outside the stage stands in the front of the parent. A front is kept only until its
 * children are done. Twice the cost of the factorisation.
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
    private final double[][] sigma;

    private Covariances(double[][] sigma) {
      this.sigma = sigma;
    }

    double of(int latent, int other) {
      return sigma[local(latent)][local(other)];
    }

    private int local(int latent) {
      int node = graph.nodeOf(latent);
      return position[node] + latent - graph.start(node);
    }
  }

  /** A stage whose turn has come, with the finished front of its parent. */
  private static final class Task {
    private final int stage;
    private final int parent;
    private final double[][] parentSigma;

    private Task(int stage, int parent, double[][] parentSigma) {
      this.stage = stage;
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
    EliminationPlan plan = inverse.plan;
    Deque<Task> tasks = new ArrayDeque<>();
    for (int root : plan.roots()) {
      tasks.push(new Task(root, -1, new double[0][]));
    }
    Comparator<Integer> largestFirst = Comparator.<Integer>comparingInt(plan::width).reversed();
    while (!tasks.isEmpty()) {
      Task task = tasks.pop();
      double[][] sigma = inverse.front(task);
      plan.locate(task.stage, inverse.position);
      Covariances covariances = inverse.new Covariances(sigma);
      for (int node = plan.first(task.stage); node < plan.first(task.stage + 1); node++) {
        visitor.visit(node, covariances);
      }
      List<Integer> children = plan.children(task.stage);
      children.stream()
          .sorted(largestFirst)
          .forEach(child -> tasks.push(new Task(child, task.stage, sigma)));
    }
  }

  /** The full symmetric covariance of the front of the task's stage. */
  private double[][] front(Task task) {
    int size = plan.size(task.stage);
    if (task.stage >= factor.eliminated()) {
      double[][] sigma = new double[size][];
      for (int i = 0; i < size; i++) {
        sigma[i] = kept[i].clone();
      }
      return sigma;
    }
    int all = size + plan.width(task.stage);
    double[][] sigma = new double[all][all];
    copyRest(task, sigma, size);
    double[] factors = new double[Runs.TOGETHER];
    double[][] panel = factor.panel(task.stage);
    for (int c = size - 1; c >= 0; c--) {
      solveRow(sigma, panel[c], c, factors);
    }
    return sigma;
  }

  /** The row and the column of one latent, those of the later ones being done. */
  private static void solveRow(double[][] sigma, double[] u, int c, double[] factors) {
    double[] own = sigma[c];
    int k = c + 1;
    for (; k + Runs.TOGETHER <= u.length; k += Runs.TOGETHER) {
      System.arraycopy(u, k, factors, 0, Runs.TOGETHER);
      Runs.subtractFour(own, c + 1, sigma, k, factors);
    }
    for (; k < u.length; k++) {
      Runs.subtract(own, c + 1, sigma[k], u[k]);
    }
    double inverse = 1 / u[c];
    for (int s = c + 1; s < u.length; s++) {
      own[s] *= inverse;
      sigma[s][c] = own[s];
    }
    own[c] = (inverse - Runs.dot(u, own, c + 1)) * inverse;
  }

  /** Copies the covariances of the later latents from the front of the parent. */
  private void copyRest(Task task, double[][] sigma, int size) {
    if (task.parent < 0) {
      return;
    }
    plan.locate(task.parent, position);
    int[] blocks = plan.front(task.stage);
    int row = size;
    for (int block : blocks) {
      for (int r = 0; r < graph.size(block); r++, row++) {
        double[] from = task.parentSigma[position[block] + r];
        int to = size;
        for (int other : blocks) {
          int run = graph.size(other);
          System.arraycopy(from, position[other], sigma[row], to, run);
          to += run;
        }
      }
    }
  }
}
