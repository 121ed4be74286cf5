package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The symbolic half of the factorisation: which nodes are eliminated together (a stage), which
 * later nodes a stage touches once all earlier ones are eliminated (its front), and the tree that
 * says whose front receives whose update. It depends on the pattern alone, so that it is made once
 * for all Newton steps.
 *
 * <p>A node joins the stage before it where that costs less than handing an update from one to the
 * other: players who all meet become one dense block. Stages never cross the start of a section of
 * the graph, so that those before it stay as they are when later nodes are added.
 *
 * <p>Reference: Ashcraft and Grimes, The influence of relaxed supernode partitions on the
 * multifrontal method, ACM TOMS 15 (1989).
 */
final class EliminationPlan {
  /** What handing on one number of an update costs, in multiplications (measured roughly). */
  private static final double HAND_ON = 4;

  private final BlockGraph graph;
  private final int[] firsts;
  private final int[] stageOf;
  private final int[][] fronts;
  private final int[] widths;
  private final List<List<Integer>> children = new ArrayList<>();
  private final List<Integer> roots = new ArrayList<>();

  EliminationPlan(BlockGraph graph) {
    this.graph = graph;
    int[][] reached = reached(graph);
    firsts = firsts(graph, reached);
    int stages = firsts.length - 1;
    stageOf = new int[graph.nodes()];
    fronts = new int[stages][];
    widths = new int[stages];
    for (int stage = 0; stage < stages; stage++) {
      children.add(new ArrayList<>());
      Arrays.fill(stageOf, firsts[stage], firsts[stage + 1], stage);
      fronts[stage] = reached[firsts[stage + 1] - 1];
      widths[stage] = latents(graph, fronts[stage]);
    }
    for (int stage = 0; stage < stages; stage++) {
      if (fronts[stage].length == 0) {
        roots.add(stage);
      } else {
        children.get(stageOf[fronts[stage][0]]).add(stage);
      }
    }
  }

  /** For each node the later ones that it touches when its turn comes. */
  private static int[][] reached(BlockGraph graph) {
    int nodes = graph.nodes();
    int[][] reached = new int[nodes][];
    BitSet[] reach = new BitSet[nodes];
    for (int node = 0; node < nodes; node++) {
      reach[node] = (BitSet) graph.later(node).clone();
    }
    for (int node = 0; node < nodes; node++) {
      reach[node].clear(node);
      reached[node] = reach[node].stream().toArray();
      if (reached[node].length > 0) {
        reach[reached[node][0]].or(reach[node]);
      }
      reach[node] = new BitSet();
    }
    return reached;
  }

  /** The first node of each stage, and behind them the number of nodes. */
  private static int[] firsts(BlockGraph graph, int[][] reached) {
    int[] firsts = new int[graph.nodes() + 1];
    int stages = 0;
    int size = 0;
    int width = 0;
    for (int node = 0; node < graph.nodes(); node++) {
      int own = graph.size(node);
      int rest = latents(graph, reached[node]);
      boolean follows =
          node > 0
              && !graph.startsSection(node)
              && reached[node - 1].length > 0
              && reached[node - 1][0] == node
              && cost(size + own, rest) <= cost(size, width) + cost(own, rest);
      if (!follows) {
        firsts[stages++] = node;
        size = 0;
      }
      size += own;
      width = rest;
    }
    firsts[stages] = graph.nodes();
    return Arrays.copyOf(firsts, stages + 1);
  }

  private static int latents(BlockGraph graph, int[] nodes) {
    int sum = 0;
    for (int node : nodes) {
      sum += graph.size(node);
    }
    return sum;
  }

  /** Multiplications of a stage of some latents whose front has some more. */
  private static double cost(double size, double width) {
    double all = size + width;
    return (all * all * all - width * width * width) / 3 + HAND_ON * width * width;
  }

  /** What one factorisation costs. */
  double multiplications() {
    double sum = 0;
    for (int stage = 0; stage < stages(); stage++) {
      sum += cost(size(stage), widths[stage]);
    }
    return sum;
  }

  /**
   * Whether the nodes before one are those of an earlier plan, touching the same later ones. The
   * last node of both is the border, whatever its number.
   */
  boolean continues(EliminationPlan earlier, int until) {
    if (until > earlier.graph.nodes() - 1 || until > graph.nodes() - 1) {
      return false;
    }
    int stages = earlier.stageOf[until];
    if (stages >= firsts.length
        || !Arrays.equals(firsts, 0, stages + 1, earlier.firsts, 0, stages + 1)
        || firsts[stages] != until) {
      return false;
    }
    for (int stage = 0; stage < stages; stage++) {
      int[] mine = fronts[stage];
      int[] before = earlier.fronts[stage];
      boolean same = size(stage) == earlier.size(stage) && mine.length == before.length;
      for (int i = 0; same && i < mine.length; i++) {
        boolean border = before[i] == earlier.graph.nodes() - 1;
        same = mine[i] == (border ? graph.nodes() - 1 : before[i]);
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

  int stages() {
    return fronts.length;
  }

  int stageOf(int node) {
    return stageOf[node];
  }

  /** The first node of a stage; of the stage after the last one the number of nodes. */
  int first(int stage) {
    return firsts[stage];
  }

  /** How many latents a stage has of its own. */
  int size(int stage) {
    return graph.start(firsts[stage + 1]) - graph.start(firsts[stage]);
  }

  /** The later nodes in the front, ascending; the first is of the parent in the tree. */
  int[] front(int stage) {
    return fronts[stage];
  }

  /** The stage that receives the update of another, or −1. */
  int parent(int stage) {
    return fronts[stage].length == 0 ? -1 : stageOf[fronts[stage][0]];
  }

  /** How many latents the later nodes of the front have. */
  int width(int stage) {
    return widths[stage];
  }

  List<Integer> children(int stage) {
    return children.get(stage);
  }

  /** Stages with nothing later in their front. */
  List<Integer> roots() {
    return roots;
  }

  /** Notes for each node of the stage and each later node of its front where it starts within. */
  void locate(int stage, int[] position) {
    int start = 0;
    for (int node = firsts[stage]; node < firsts[stage + 1]; node++) {
      position[node] = start;
      start += graph.size(node);
    }
    for (int other : fronts[stage]) {
      position[other] = start;
      start += graph.size(other);
    }
  }
}
