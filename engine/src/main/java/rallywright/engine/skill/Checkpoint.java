package rallywright.engine.skill;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * A place in the order of elimination, the start of a week, at which a factor of the same system
 * with newer weeks may take up: what was eliminated before it need not be done again.
 *
 * <p>Kept are the updates that wait there for their parents, and what evidence of the weeks before
 * says of the border alone, so that both belong to the same point.
 */
final class Checkpoint {
  private final int node;
  private final double[] earlyBorder;
  private final Map<Integer, double[][]> waiting = new TreeMap<>();

  /**
   * A place.
   *
   * @param node the first node after it, or −1 for none
   * @param earlyBorder the border's block of the evidence before it
   */
  Checkpoint(int node, double[] earlyBorder) {
    this.node = node;
    this.earlyBorder = earlyBorder;
  }

  static Checkpoint none() {
    return new Checkpoint(-1, new double[0]);
  }

  int node() {
    return node;
  }

  boolean isSet() {
    return node > 0;
  }

  double[] earlyBorder() {
    return Arrays.copyOf(earlyBorder, earlyBorder.length);
  }

  void keep(int from, double[][] update) {
    waiting.put(from, update);
  }

  /** Puts the waiting updates in their places. */
  void restore(double[][][] updates) {
    waiting.forEach((from, update) -> updates[from] = update);
  }
}
