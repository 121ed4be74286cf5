package rallywright.engine.odds;

/**
 * The states of one block, eliminated one after the other: solves x = r + Q x and y = v + y Q where
 * Q holds the chances to stay within the block.
 *
 * <p>For the maintainer: the elimination never subtracts. The diagonal of I - Q is not formed as
 * one less a chance but as the sum of all chances that lead away, as in Grassmann, Taksar and
 * Heyman (1985), <em>Regenerative analysis and steady state distributions for Markov chains</em>,
 * Operations Research 33:1107-1116 (cited from memory). So small chances lose no digits.
 */
final class BlockFactors {

  private final double[][] stay;
  private final double[] away;

  private BlockFactors(double[][] stay, double[] away) {
    this.stay = stay;
    this.away = away;
  }

  /**
   * Eliminates a block.
   *
   * @param stay chances from state to state within the block; overwritten
   * @param leave chances to leave the block from each state; overwritten
   * @throws IllegalArgumentException if some states can never be left
   */
  static BlockFactors of(double[][] stay, double[] leave) {
    int size = leave.length;
    double[] away = new double[size];
    for (int k = 0; k < size; k++) {
      double sum = leave[k];
      for (int j = k + 1; j < size; j++) {
        sum += stay[k][j];
      }
      if (!(sum > 0)) {
        throw new IllegalArgumentException(
            "The chances must let somebody win: as they are the game never ends. Maybe a chance of"
                + " 0 should be a small one, such as 0.05.");
      }
      away[k] = sum;
      for (int i = k + 1; i < size; i++) {
        eliminate(stay, leave, k, i, sum);
      }
    }
    return new BlockFactors(stay, away);
  }

  private static void eliminate(double[][] stay, double[] leave, int k, int i, double sum) {
    double share = stay[i][k] / sum;
    stay[i][k] = share;
    if (share == 0) {
      return;
    }
    for (int j = k + 1; j < leave.length; j++) {
      if (j != i) {
        stay[i][j] += share * stay[k][j];
      }
    }
    leave[i] += share * leave[k];
  }

  /** Solves x = r + Q x in place. */
  void solve(double[] r) {
    int size = away.length;
    for (int k = 0; k < size; k++) {
      for (int i = k + 1; i < size; i++) {
        r[i] += stay[i][k] * r[k];
      }
    }
    for (int i = size - 1; i >= 0; i--) {
      double sum = r[i];
      for (int j = i + 1; j < size; j++) {
        sum += stay[i][j] * r[j];
      }
      r[i] = sum / away[i];
    }
  }

  /** Solves y = v + y Q in place: the expected visits of each state. */
  void solveVisits(double[] v) {
    int size = away.length;
    for (int j = 0; j < size; j++) {
      double sum = v[j];
      for (int i = 0; i < j; i++) {
        sum += stay[i][j] * v[i];
      }
      v[j] = sum / away[j];
    }
    for (int k = size - 1; k >= 0; k--) {
      for (int i = k + 1; i < size; i++) {
        v[k] += stay[i][k] * v[i];
      }
    }
  }
}
