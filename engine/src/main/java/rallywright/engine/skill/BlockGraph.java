package rallywright.engine.skill;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Which blocks of latents touch which: nodes in the order of elimination, each a run of consecutive
 * latents, and for each node its neighbours later in that order.
 */
final class BlockGraph {
  private final int[] sizes;
  private final int[] starts;
  private final int[] nodeOf;
  private final BitSet[] later;
  private final BitSet sections = new BitSet();

  BlockGraph(int[] sizes) {
    this.sizes = sizes.clone();
    starts = new int[sizes.length + 1];
    later = new BitSet[sizes.length];
    for (int node = 0; node < sizes.length; node++) {
      starts[node + 1] = starts[node] + sizes[node];
      later[node] = new BitSet();
    }
    nodeOf = new int[starts[sizes.length]];
    for (int node = 0; node < sizes.length; node++) {
      Arrays.fill(nodeOf, starts[node], starts[node + 1], node);
    }
  }

  /** The same nodes and edges, to which others may be added. */
  BlockGraph copy() {
    BlockGraph copy = new BlockGraph(sizes);
    for (int node = 0; node < sizes.length; node++) {
      copy.later[node].or(later[node]);
    }
    copy.sections.or(sections);
    return copy;
  }

  void connect(int node, int other) {
    if (node != other) {
      later[Math.min(node, other)].set(Math.max(node, other));
    }
  }

  /** Notes that a section starts with a node, such as a week: nothing is joined across. */
  void startSection(int node) {
    sections.set(node);
  }

  boolean startsSection(int node) {
    return sections.get(node);
  }

  /** Connects all nodes that a row over these latents touches. */
  void connectAll(int[] latents) {
    for (int i = 0; i < latents.length; i++) {
      for (int j = i + 1; j < latents.length; j++) {
        connect(nodeOf[latents[i]], nodeOf[latents[j]]);
      }
    }
  }

  int nodes() {
    return sizes.length;
  }

  int latents() {
    return nodeOf.length;
  }

  int size(int node) {
    return sizes[node];
  }

  /** The first latent of the node. */
  int start(int node) {
    return starts[node];
  }

  int nodeOf(int latent) {
    return nodeOf[latent];
  }

  /** Neighbours later in the order, ascending. */
  BitSet later(int node) {
    return later[node];
  }
}
