package rallywright.engine.skill;

import java.util.Arrays;
import java.util.NavigableMap;

/**
 * One step of a player's random walk with the drift that practice adds: θ(next) − θ(before) − Σ
 * minutes · γ is normal. Without a node before it is the start of the walk, whose mean the prior
 * gives.
 */
final class Step {
  private final int before;
  private final int next;
  private final int weeks;
  private final int[] gains;
  private final double[][] minutes;

  /**
   * Gathers the step.
   *
   * @param nodes first latent of the node before, or −1, first latent of the next node, and weeks
   *     between the two
   * @param practised by gain the effective minutes of each skill between the two
   */
  Step(Layout layout, int[] nodes, NavigableMap<Integer, double[]> practised) {
    before = nodes[0];
    next = nodes[1];
    weeks = nodes[2];
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

  boolean isStart() {
    return before < 0;
  }

  /** The first latent of the node it leads to. */
  int next() {
    return next;
  }

  /** Weeks since the node before, or since the player's first week. */
  int weeks() {
    return weeks;
  }

  /** How many latents its sum of one skill has. */
  int members() {
    return 2 + gains.length;
  }

  /** The latent of a member of the sum of a skill; that of weight 0 is any. */
  int latent(int member, int skill) {
    return switch (member) {
      case 0 -> next + skill;
      case 1 -> isStart() ? next + skill : before + skill;
      default -> gains[member - 2];
    };
  }

  /** The weight of a member of the sum of a skill. */
  double weight(int member, int skill) {
    return switch (member) {
      case 0 -> 1;
      case 1 -> isStart() ? 0 : -1;
      default -> -minutes[member - 2][skill];
    };
  }

  /** The sums θ(next) − θ(before) − Σ minutes · γ at x, for each skill. */
  double[] sums(double[] x, int skills) {
    double[] sums = Arrays.copyOfRange(x, next, next + skills);
    if (!isStart()) {
      for (int skill = 0; skill < skills; skill++) {
        sums[skill] -= x[before + skill];
      }
    }
    for (int i = 0; i < gains.length; i++) {
      double gain = x[gains[i]];
      for (int skill = 0; skill < skills; skill++) {
        sums[skill] -= minutes[i][skill] * gain;
      }
    }
    return sums;
  }

  /** Adds the sums' transpose: for each latent its weights times the values of the skills. */
  void addTranspose(double[] values, double factor, double[] into) {
    for (int skill = 0; skill < values.length; skill++) {
      into[next + skill] += factor * values[skill];
      if (!isStart()) {
        into[before + skill] -= factor * values[skill];
      }
    }
    for (int i = 0; i < gains.length; i++) {
      double sum = 0;
      for (int skill = 0; skill < values.length; skill++) {
        sum += minutes[i][skill] * values[skill];
      }
      into[gains[i]] -= factor * sum;
    }
  }

  /** Adds the precision of the step, given that of two of its sums. */
  void addPair(BlockMatrix matrix, int s, int t, double precision) {
    for (int i = 0; i < members(); i++) {
      for (int j = 0; j < members(); j++) {
        double value = precision * weight(i, s) * weight(j, t);
        if (value != 0 && latent(i, s) <= latent(j, t)) {
          matrix.add(latent(i, s), latent(j, t), value);
        }
      }
    }
  }
}
