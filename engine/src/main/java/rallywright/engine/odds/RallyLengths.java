package rallywright.engine.odds;

import java.util.Arrays;

/**
 * How many rallies a game takes: the exact chance of each number, up to where all but a small rest
 * is covered.
 */
public final class RallyLengths {

  /**
   * Room for rounding when a quantile is looked up, so that a chance which is 0.9 in exact numbers
   * counts as 0.9.
   */
  static final double ROUNDING = 1e-12;

  private final double[] chances;

  private RallyLengths(double[] chances) {
    this.chances = chances;
  }

  /**
   * Steps the chain rally by rally until enough games have ended.
   *
   * @param values the solved chain
   * @param start the state before the first rally
   * @param coverage the share of games that must have ended
   */
  static RallyLengths of(ChainValues values, int start, double coverage) {
    GameChain chain = values.chain();
    double[] now = new double[chain.states()];
    now[start] = 1;
    double[] ended = new double[64];
    double total = 0;
    int rallies = 0;
    double live = 1;
    while (total < coverage - ROUNDING && live > 0) {
      rallies++;
      if (rallies == ended.length) {
        ended = Arrays.copyOf(ended, 2 * rallies);
      }
      double[] next = new double[chain.states()];
      ended[rallies] = step(values, now, next);
      total += ended[rallies];
      now = next;
      live = 1 - total;
    }
    return new RallyLengths(Arrays.copyOf(ended, rallies + 1));
  }

  private static double step(ChainValues values, double[] now, double[] next) {
    double ended = 0;
    for (int state = 0; state < now.length; state++) {
      if (now[state] == 0) {
        continue;
      }
      for (int result = 0; result < 2; result++) {
        double chance = now[state] * values.chance(state, result);
        int target = values.link(state, result).target();
        if (target >= 0) {
          next[target] += chance;
        } else {
          ended += chance;
        }
      }
    }
    return ended;
  }

  /**
   * The chance of a number of rallies.
   *
   * @param rallies the number, 0 or more
   * @return its chance, 0 beyond {@link #longest}
   */
  public double chanceOf(int rallies) {
    return rallies >= 0 && rallies < chances.length ? chances[rallies] : 0;
  }

  /**
   * The largest number of rallies that is covered.
   *
   * @return rallies
   */
  public int longest() {
    return chances.length - 1;
  }

  /**
   * The smallest number of rallies within which the game ends with a wished chance.
   *
   * @param chance above 0, at most the coverage asked for
   * @return rallies
   * @throws IllegalArgumentException if the chance lies outside
   */
  public int quantile(double chance) {
    double total = 0;
    for (int rallies = 1; rallies < chances.length; rallies++) {
      total += chances[rallies];
      if (chance > 0 && total >= chance - ROUNDING) {
        return rallies;
      }
    }
    throw new IllegalArgumentException(
        "The chance (%s) must lie above 0 and at most at %s. Maybe ask for a larger coverage."
            .formatted(chance, total));
  }
}
