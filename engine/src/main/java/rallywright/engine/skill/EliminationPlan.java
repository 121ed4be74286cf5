package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The symbolic half of the factorisation: which later nodes each node touches once all earlier ones
 * are eliminated (its front), and the tree that says whose front receives whose update. It depends
 * on the pattern alone, so that it is made once for all Newton steps.
 */
final class EliminationPlan {
  private final BlockGraph graph;
  private final int[][] fronts;
  private final int[] widths;
  private final List<List<Integer>> children = new ArrayList<>();
  private final List<Integer> roots = new ArrayList<>();

  EliminationPlan(BlockGraph graph) {
    this.graph = graph;
    int nodes = graph.nodes();
    fronts = new int[nodes][];
    widths = new int[nodes];
    BitSet[] reach = new BitSet[nodes];
    for (int node = 0; node < nodes; node++) {
      children.add(new ArrayList<>());
      reach[node] = (BitSet) graph.later(node).clone();
    }
    for (int node = 0; node < nodes; node++) {
      for (int child : children.get(node)) {
        reach[node].or(reach[child]);
        reach[child] = new BitSet();
      }
      reach[node].clear(node);
      fronts[node] = reach[node].stream().toArray();
      for (int other : fronts[node]) {
        widths[node] += graph.size(other);
      }
      if (fronts[node].length == 0) {
        roots.add(node);
      } else {
        children.get(fronts[node][0]).add(node);
      }
    }
  }

  /**
   * Whether the nodes before one are those of an earlier plan, touching the same later ones. The
   * last node of both is the border, whatever its number.
   */
  boolean continues(EliminationPlan earlier, int until) {
    if (until > earlier.fronts.length - 1 || until > fronts.length - 1) {
      return false;
    }
    for (int node = 0; node < until; node++) {
      int[] mine = fronts[node];
      int[] before = earlier.fronts[node];
      boolean same = graph.size(node) == earlier.graph.size(node) && mine.length == before.length;
      for (int i = 0; same && i < mine.length; i++) {
        boolean border = before[i] == earlier.fronts.length - 1;
        same = mine[i] == (border ? fronts.length - 1 : before[i]);
      }
      if (!same) {
        return false;
      }
    }
    return true;
  }

  BlockGraph graph() {
    return graph;
  }

  /** The later nodes in the front, ascending; the first is the parent in the tree. */
  int[] front(int node) {
    return fronts[node];
  }

  /** How many latents the later nodes of the front have. */
  int width(int node) {
    return widths[node];
  }

  List<Integer> children(int node) {
    return children.get(node);
  }

  /** Nodes with nothing later in their front. */
  List<Integer> roots() {
    return roots;
  }

  /** Notes for the node and each later node of its front where it starts within the front. */
  void locate(int node, int[] position) {
    position[node] = 0;
    int start = graph.size(node);
    for (int other : fronts[node]) {
      position[other] = start;
      start += graph.size(other);
    }
  }

  /** Multiplications and additions of one factorisation, to judge the cost beforehand. */
  double operations() {
    double sum = 0;
    for (int node = 0; node < fronts.length; node++) {
      double all = graph.size(node) + (double) widths[node];
      sum += graph.size(node) * all * all;
    }
    return sum;
  }
}
