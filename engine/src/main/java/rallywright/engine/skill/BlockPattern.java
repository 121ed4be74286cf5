package rallywright.engine.skill;

import java.util.Arrays;

/**
 * Where the numbers of a {@link BlockMatrix} stand: for each node its diagonal block and, to the
 * right of it, the blocks of its later neighbours, row by row. Made once for all matrices of a
 * graph, which must not be connected further.
 */
final class BlockPattern {
  private final BlockGraph graph;
  private final int[][] neighbours;
  private final int[][] columns;
  private final int[] widths;
  private final int[] starts;

  BlockPattern(BlockGraph graph) {
    this.graph = graph;
    int nodes = graph.nodes();
    neighbours = new int[nodes][];
    columns = new int[nodes][];
    widths = new int[nodes];
    starts = new int[nodes + 1];
    for (int node = 0; node < nodes; node++) {
      neighbours[node] = graph.later(node).stream().toArray();
      columns[node] = new int[neighbours[node].length];
      int width = graph.size(node);
      for (int i = 0; i < columns[node].length; i++) {
        columns[node][i] = width;
        width += graph.size(neighbours[node][i]);
      }
      widths[node] = width;
      starts[node + 1] = Math.addExact(starts[node], graph.size(node) * width);
    }
  }

  BlockGraph graph() {
    return graph;
  }

  /** How many numbers a matrix has. */
  int length() {
    return starts[starts.length - 1];
  }

  /** Where the rows of a node start; of the node after the last one where they end. */
  int start(int node) {
    return starts[node];
  }

  /** How long a row of a node is. */
  int width(int node) {
    return widths[node];
  }

  /** Later neighbours, ascending. */
  int[] neighbours(int node) {
    return neighbours[node];
  }

  /** Where the block of each later neighbour starts within a row. */
  int[] columns(int node) {
    return columns[node];
  }

  /** Where the block of a later neighbour starts within a row. */
  int column(int node, int neighbour) {
    return columns[node][Arrays.binarySearch(neighbours[node], neighbour)];
  }

  /** The place of the number at (i, j), which is that at (j, i). */
  int place(int i, int j) {
    int first = Math.min(i, j);
    int second = Math.max(i, j);
    int node = graph.nodeOf(first);
    int other = graph.nodeOf(second);
    int column = other == node ? 0 : column(node, other);
    return starts[node]
        + (first - graph.start(node)) * widths[node]
        + column
        + second
        - graph.start(other);
  }
}
