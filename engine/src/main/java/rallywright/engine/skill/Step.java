package rallywright.engine.skill;

import java.util.NavigableMap;

/**
 * One step of a player's random walk with the drift that practice adds: θ(next) − θ(before) − Σ
 * minutes · γ is normal with a known precision. Without a node before it is the start of the walk,
 * whose mean the prior gives.
 */
final class Step {
  private final int before;
  private final int next;
  private final int[] gains;
  private final double[][] minutes;

  /**
   * Gathers the step.
   *
   * @param before first latent of the node before, or −1
   * @param next first latent of the next node
   * @param practised by gain the effective minutes of each skill between the two
   */
  Step(Layout layout, int before, int next, NavigableMap<Integer, double[]> practised) {
    this.before = before;
    this.next = next;
    int[] learned =
        practised.keySet().stream()
            .mapToInt(Integer::intValue)
            .filter(gain -> layout.gainLatent(gain) >= 0)
            .toArray();
    gains = new int[learned.length];
    minutes = new double[learned.length][];
    for (int i = 0; i < learned.length; i++) {
      gains[i] = layout.gainLatent(learned[i]);
      minutes[i] = practised.get(learned[i]);
    }
  }

  /** Adds the precision of the step, given that of its increment. */
  void addTo(BlockMatrix matrix, double[][] precision) {
    for (int s = 0; s < precision.length; s++) {
      for (int t = 0; t < precision.length; t++) {
        if (precision[s][t] != 0) {
          addPair(matrix, s, t, precision[s][t]);
        }
      }
    }
  }

  private void addPair(BlockMatrix matrix, int s, int t, double precision) {
    int members = 2 + gains.length;
    for (int i = 0; i < members; i++) {
      for (int j = 0; j < members; j++) {
        double value = precision * weight(i, s) * weight(j, t);
        if (value != 0 && latent(i, s) <= latent(j, t)) {
          matrix.add(latent(i, s), latent(j, t), value);
        }
      }
    }
  }

  private int latent(int member, int skill) {
    return switch (member) {
      case 0 -> next + skill;
      case 1 -> before + skill;
      default -> gains[member - 2];
    };
  }

  private double weight(int member, int skill) {
    return switch (member) {
      case 0 -> 1;
      case 1 -> before < 0 ? 0 : -1;
      default -> -minutes[member - 2][skill];
    };
  }
}
