package rallywright.engine.skill;

import java.util.Arrays;

/**
 * A symmetric matrix with the pattern of a {@link BlockGraph}: for each node its diagonal block
 * and, to the right of it, the blocks of its later neighbours. Only the upper triangle is kept.
 */
final class BlockMatrix {
  private final BlockGraph graph;
  private final int[][] neighbours;
  private final int[][] columns;
  private final int[] widths;
  private final double[][] rows;

  BlockMatrix(BlockGraph graph) {
    this.graph = graph;
    int nodes = graph.nodes();
    neighbours = new int[nodes][];
    columns = new int[nodes][];
    widths = new int[nodes];
    rows = new double[nodes][];
    for (int node = 0; node < nodes; node++) {
      neighbours[node] = graph.later(node).stream().toArray();
      columns[node] = new int[neighbours[node].length];
      int width = graph.size(node);
      for (int i = 0; i < columns[node].length; i++) {
        columns[node][i] = width;
        width += graph.size(neighbours[node][i]);
      }
      widths[node] = width;
      rows[node] = new double[graph.size(node) * width];
    }
  }

  BlockGraph graph() {
    return graph;
  }

  /** Adds the value at (i, j) and, as the matrix is symmetric, at (j, i). */
  void add(int i, int j, double value) {
    int first = Math.min(i, j);
    int second = Math.max(i, j);
    int node = graph.nodeOf(first);
    rows[node][(first - graph.start(node)) * widths[node] + column(node, second)] += value;
  }

  private int column(int node, int latent) {
    int other = graph.nodeOf(latent);
    int inBlock = latent - graph.start(other);
    if (other == node) {
      return inBlock;
    }
    return columns[node][Arrays.binarySearch(neighbours[node], other)] + inBlock;
  }

  /** Adds weight × a aᵀ for a sparse vector a with ascending latents. */
  void addOuter(int[] latents, double[] values, double weight) {
    for (int i = 0; i < latents.length; i++) {
      double scaled = weight * values[i];
      if (scaled != 0) {
        for (int j = i; j < latents.length; j++) {
          add(latents[i], latents[j], scaled * values[j]);
        }
      }
    }
  }

  /** Adds another matrix whose pattern lies within this one. */
  void addAll(BlockMatrix other) {
    for (int node = 0; node < graph.nodes(); node++) {
      int size = graph.size(node);
      copyBlock(other, node, new int[] {0, 0, size});
      for (int i = 0; i < other.neighbours[node].length; i++) {
        int neighbour = other.neighbours[node][i];
        int to = columns[node][Arrays.binarySearch(neighbours[node], neighbour)];
        copyBlock(other, node, new int[] {other.columns[node][i], to, graph.size(neighbour)});
      }
    }
  }

  private void copyBlock(BlockMatrix other, int node, int[] fromToWidth) {
    for (int row = 0; row < graph.size(node); row++) {
      int from = row * other.widths[node] + fromToWidth[0];
      int to = row * widths[node] + fromToWidth[1];
      for (int c = 0; c < fromToWidth[2]; c++) {
        rows[node][to + c] += other.rows[node][from + c];
      }
    }
  }

  /** A copy of the rows of a node. */
  double[] rows(int node) {
    return rows[node].clone();
  }

  /** Adds to the rows of a node. */
  void addRows(int node, double[] values) {
    for (int i = 0; i < values.length; i++) {
      rows[node][i] += values[i];
    }
  }

  /** The product with a vector over all latents. */
  double[] times(double[] x) {
    double[] product = new double[x.length];
    for (int node = 0; node < graph.nodes(); node++) {
      int start = graph.start(node);
      for (int row = 0; row < graph.size(node); row++) {
        int base = row * widths[node];
        int i = start + row;
        product[i] += rows[node][base + row] * x[i];
        for (int c = row + 1; c < graph.size(node); c++) {
          product[i] += rows[node][base + c] * x[start + c];
          product[start + c] += rows[node][base + c] * x[i];
        }
        for (int n = 0; n < neighbours[node].length; n++) {
          int other = graph.start(neighbours[node][n]);
          int column = base + columns[node][n];
          for (int c = 0; c < graph.size(neighbours[node][n]); c++) {
            product[i] += rows[node][column + c] * x[other + c];
            product[other + c] += rows[node][column + c] * x[i];
          }
        }
      }
    }
    return product;
  }

  /**
   * Writes the rows of a node into a panel of {@code width} columns; {@code position} says where in
   * the panel each node starts.
   */
  void copyRows(int node, double[] panel, int width, int[] position) {
    int size = graph.size(node);
    for (int row = 0; row < size; row++) {
      int base = row * widths[node];
      System.arraycopy(rows[node], base, panel, row * width, size);
      for (int n = 0; n < neighbours[node].length; n++) {
        int other = neighbours[node][n];
        System.arraycopy(
            rows[node],
            base + columns[node][n],
            panel,
            row * width + position[other],
            graph.size(other));
      }
    }
  }
}
