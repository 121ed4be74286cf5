package rallywright.engine.odds;

import rallywright.engine.odds.GameChain.Link;

/**
 * A chain with its chances, solved from the last block to the first: for every state the chance
 * that A wins and the first three moments of the number of rallies to come.
 *
 * <p>With T the rallies to come and p the chances of a rally: E[T] = 1 + sum p E[T'], E[T²] = 1 + 2
 * sum p E[T'] + sum p E[T'²] and E[T³] = 1 + 3 sum p E[T'] + 3 sum p E[T'²] + sum p E[T'³], the
 * sums over both results of the rally.
 */
final class ChainValues {

  private final GameChain chain;
  private final double[] serverWins;
  private final BlockFactors[] factors;
  private final double[] winA;
  private final double[] mean;
  private final double[] square;
  private final double[] cube;

  private ChainValues(GameChain chain, RallyChances chances) {
    this.chain = chain;
    int states = chain.states();
    serverWins = new double[states];
    for (int state = 0; state < states; state++) {
      serverWins[state] = chances.serverWins(chain.serve(state)).value();
    }
    factors = new BlockFactors[chain.blocks()];
    winA = new double[states];
    mean = new double[states];
    square = new double[states];
    cube = new double[states];
    for (int block = chain.blocks() - 1; block >= 0; block--) {
      solve(block);
    }
  }

  static ChainValues of(GameChain chain, RallyChances chances) {
    return new ChainValues(chain, chances);
  }

  GameChain chain() {
    return chain;
  }

  /** The chance that the serving side wins the rally played in a state. */
  double serverWins(int state) {
    return serverWins[state];
  }

  BlockFactors factors(int block) {
    return factors[block];
  }

  /** The chance that A wins the game: of a state, or of an end. */
  double winA(int target) {
    return target >= 0 ? winA[target] : target == GameChain.A_WINS ? 1 : 0;
  }

  /** Expected rallies to come. */
  double mean(int state) {
    return mean[state];
  }

  /** Expected square of the rallies to come. */
  double square(int state) {
    return square[state];
  }

  /** Expected third power of the rallies to come. */
  double cube(int state) {
    return cube[state];
  }

  /** The factors of the tie-break as it would be without the fold, one round of it. */
  BlockFactors factorsWithoutFold(int block) {
    return factorsOf(block, FoldedLinks.LEAVE);
  }

  private enum FoldedLinks {
    STAY,
    LEAVE
  }

  private void solve(int block) {
    int first = chain.blockStart(block);
    int size = chain.blockStart(block + 1) - first;
    factors[block] = factorsOf(block, FoldedLinks.STAY);
    double[] wins = new double[size];
    double[] rallies = new double[size];
    for (int i = 0; i < size; i++) {
      wins[i] = outside(first + i, block, Value.WIN);
      rallies[i] = 1 + outside(first + i, block, Value.MEAN);
    }
    factors[block].solve(wins);
    factors[block].solve(rallies);
    System.arraycopy(wins, 0, winA, first, size);
    System.arraycopy(rallies, 0, mean, first, size);
    double[] squares = new double[size];
    for (int i = 0; i < size; i++) {
      squares[i] = 2 * mean[first + i] - 1 + outside(first + i, block, Value.SQUARE);
    }
    factors[block].solve(squares);
    System.arraycopy(squares, 0, square, first, size);
    double[] cubes = new double[size];
    for (int i = 0; i < size; i++) {
      cubes[i] =
          3 * square[first + i] - 3 * mean[first + i] + 1 + outside(first + i, block, Value.CUBE);
    }
    factors[block].solve(cubes);
    System.arraycopy(cubes, 0, cube, first, size);
  }

  private BlockFactors factorsOf(int block, FoldedLinks folded) {
    int first = chain.blockStart(block);
    int end = chain.blockStart(block + 1);
    double[][] stay = new double[end - first][end - first];
    double[] leave = new double[end - first];
    for (int state = first; state < end; state++) {
      for (int result = 0; result < 2; result++) {
        Link link = link(state, result);
        boolean inside = link.target() >= first && link.target() < end;
        if (inside && !(link.folds() && folded == FoldedLinks.LEAVE)) {
          stay[state - first][link.target() - first] += chance(state, result);
        } else {
          leave[state - first] += chance(state, result);
        }
      }
    }
    return BlockFactors.of(stay, leave);
  }

  private enum Value {
    WIN,
    MEAN,
    SQUARE,
    CUBE
  }

  private double outside(int state, int block, Value value) {
    int first = chain.blockStart(block);
    int end = chain.blockStart(block + 1);
    double sum = 0;
    for (int result = 0; result < 2; result++) {
      int target = link(state, result).target();
      if (target < first || target >= end) {
        sum += chance(state, result) * value(target, value);
      }
    }
    return sum;
  }

  private double value(int target, Value value) {
    return switch (value) {
      case WIN -> winA(target);
      case MEAN -> target >= 0 ? mean[target] : 0;
      case SQUARE -> target >= 0 ? square[target] : 0;
      case CUBE -> target >= 0 ? cube[target] : 0;
    };
  }

  /** Where a rally leads: result 0, the server wins it; result 1, the server loses it. */
  Link link(int state, int result) {
    return result == 0 ? chain.ifServerWins(state) : chain.ifServerLoses(state);
  }

  /** The chance of a result: 0, the server wins the rally; 1, the server loses it. */
  double chance(int state, int result) {
    return result == 0 ? serverWins[state] : 1 - serverWins[state];
  }
}
