package rallywright.engine.skill;

import java.util.Arrays;

/** A symmetric matrix with a {@link BlockPattern}. Only the upper triangle is kept. */
final class BlockMatrix {
  private final BlockPattern pattern;
  private final BlockGraph graph;
  private final double[] values;

  BlockMatrix(BlockGraph graph) {
    this(new BlockPattern(graph));
  }

  BlockMatrix(BlockPattern pattern) {
    this.pattern = pattern;
    graph = pattern.graph();
    values = new double[pattern.length()];
  }

  BlockGraph graph() {
    return graph;
  }

  /** Adds the value at (i, j) and, as the matrix is symmetric, at (j, i). */
  void add(int i, int j, double value) {
    values[pattern.place(i, j)] += value;
  }

  /** Adds the value at a place of the pattern. */
  void addAt(int place, double value) {
    values[place] += value;
  }

  /** Adds weight × a aᵀ for a sparse vector a with ascending latents. */
  void addOuter(int[] latents, double[] vector, double weight) {
    for (int i = 0; i < latents.length; i++) {
      double scaled = weight * vector[i];
      if (scaled != 0) {
        for (int j = i; j < latents.length; j++) {
          add(latents[i], latents[j], scaled * vector[j]);
        }
      }
    }
  }

  /** Adds another matrix whose pattern lies within this one. */
  void addAll(BlockMatrix other) {
    for (int node = 0; node < graph.nodes(); node++) {
      copyBlock(other, node, new int[] {0, 0, graph.size(node)});
      int[] neighbours = other.pattern.neighbours(node);
      for (int i = 0; i < neighbours.length; i++) {
        int from = other.pattern.columns(node)[i];
        int to = pattern.column(node, neighbours[i]);
        copyBlock(other, node, new int[] {from, to, graph.size(neighbours[i])});
      }
    }
  }

  private void copyBlock(BlockMatrix other, int node, int[] fromToWidth) {
    int from = other.pattern.start(node) + fromToWidth[0];
    int to = pattern.start(node) + fromToWidth[1];
    for (int row = 0; row < graph.size(node); row++) {
      for (int c = 0; c < fromToWidth[2]; c++) {
        values[to + c] += other.values[from + c];
      }
      from += other.pattern.width(node);
      to += pattern.width(node);
    }
  }

  /** A copy of the rows of a node. */
  double[] rows(int node) {
    return Arrays.copyOfRange(values, pattern.start(node), pattern.start(node + 1));
  }

  /** Adds to the rows of a node. */
  void addRows(int node, double[] rows) {
    for (int i = 0; i < rows.length; i++) {
      values[pattern.start(node) + i] += rows[i];
    }
  }

  /** The product with a vector over all latents. */
  double[] times(double[] x) {
    double[] product = new double[x.length];
    for (int node = 0; node < graph.nodes(); node++) {
      int start = graph.start(node);
      for (int row = 0; row < graph.size(node); row++) {
        int base = pattern.start(node) + row * pattern.width(node);
        int i = start + row;
        product[i] += values[base + row] * x[i];
        addBoth(base + row + 1, graph.size(node) - row - 1, new int[] {i, i + 1}, x, product);
        int[] neighbours = pattern.neighbours(node);
        for (int n = 0; n < neighbours.length; n++) {
          int[] at = {i, graph.start(neighbours[n])};
          int from = base + pattern.columns(node)[n];
          addBoth(from, graph.size(neighbours[n]), at, x, product);
        }
      }
    }
    return product;
  }

  /** Adds the share of a run of one row, and that of the same run as a column. */
  private void addBoth(int from, int length, int[] rowAndColumn, double[] x, double[] product) {
    int row = rowAndColumn[0];
    int column = rowAndColumn[1];
    for (int c = 0; c < length; c++) {
      product[row] += values[from + c] * x[column + c];
      product[column + c] += values[from + c] * x[row];
    }
  }

  /**
   * Writes the rows of a node into those of a front; {@code position} says where in the front each
   * node starts.
   */
  void copyRows(int node, double[][] front, int[] position) {
    int[] neighbours = pattern.neighbours(node);
    int[] columns = pattern.columns(node);
    for (int row = 0; row < graph.size(node); row++) {
      int base = pattern.start(node) + row * pattern.width(node);
      double[] to = front[position[node] + row];
      System.arraycopy(values, base, to, position[node], graph.size(node));
      for (int n = 0; n < neighbours.length; n++) {
        int from = base + columns[n];
        System.arraycopy(values, from, to, position[neighbours[n]], graph.size(neighbours[n]));
      }
    }
  }
}
