package rallywright.engine.point;

import java.util.List;

/**
 * A Markov chain that ends: from each state it goes on to a state or leaves by an exit.
 *
 * <p><b>Card.</b> In: the chances of each step, dimensionless. Out: expected visits, the number of
 * steps to the end, the chance of each exit, and how that chance changes with any step. Valid: an
 * exit can be reached from every state. Method: the fundamental matrix N = (I − Q)⁻¹; B = N R; t =
 * N 1; the variance of the steps is (2N − I)t − t²; a change dQ, dR of row r changes B from state i
 * by N(i, r) (dQ B + dR). Source: Kemeny and Snell, <em>Finite Markov Chains</em> (from memory);
 * Grinstead and Snell, <em>Introduction to Probability</em>, chapter 11. Elimination with pivoting;
 * the chains here have fewer than twenty states.
 */
public final class AbsorbingChain {

  private static final double ROW_TOLERANCE = 1e-9;
  private static final double SMALLEST_PIVOT = 1e-13;

  private final double[][] visits;
  private final double[][] exitChances;

  private AbsorbingChain(double[][] visits, double[][] exitChances) {
    this.visits = visits;
    this.exitChances = exitChances;
  }

  /**
   * Solves a chain.
   *
   * @param steps the chance to go from a state (row) to a state
   * @param exits the chance to leave from a state (row) by an exit
   * @return the solved chain
   * @throws IllegalArgumentException if the rows do not fit together or do not sum to 1, or the
   *     chain need not end
   */
  public static AbsorbingChain of(double[][] steps, double[][] exits) {
    check(steps, exits);
    double[][] visits = inverse(steps);
    return new AbsorbingChain(visits, product(visits, exits));
  }

  private static void check(double[][] steps, double[][] exits) {
    if (steps.length == 0 || steps.length != exits.length || exits[0].length == 0) {
      throw new IllegalArgumentException(
          "The chain has %d states and exits for %d; it needs one row each, and an exit."
              .formatted(steps.length, exits.length));
    }
    for (int row = 0; row < steps.length; row++) {
      if (steps[row].length != steps.length || exits[row].length != exits[0].length) {
        throw new IllegalArgumentException(
            "Row %d of the chain is not as long as the others. Maybe a 0 was left out."
                .formatted(row));
      }
      double sum = checkedSum(steps[row]) + checkedSum(exits[row]);
      if (!(Math.abs(sum - 1) <= ROW_TOLERANCE)) {
        throw new IllegalArgumentException(
            "The chances from state %d sum to %s; they must sum to 1. Maybe one is missing."
                .formatted(row, sum));
      }
    }
  }

  private static double checkedSum(double[] chances) {
    double sum = 0;
    for (double chance : chances) {
      if (!(chance >= 0 && chance <= 1)) {
        throw new IllegalArgumentException(
            "The chance of a step (%s) must lie from 0 to 1. Maybe it was meant in percent."
                .formatted(chance));
      }
      sum += chance;
    }
    return sum;
  }

  /** (I − Q)⁻¹ by elimination with the largest pivot of each column. */
  private static double[][] inverse(double[][] steps) {
    int size = steps.length;
    double[][] left = new double[size][size];
    double[][] right = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        left[i][j] = (i == j ? 1 : 0) - steps[i][j];
      }
      right[i][i] = 1;
    }
    for (int column = 0; column < size; column++) {
      pivot(left, right, column);
      for (int row = 0; row < size; row++) {
        if (row != column) {
          double factor = left[row][column] / left[column][column];
          subtract(left[row], left[column], factor);
          subtract(right[row], right[column], factor);
        }
      }
    }
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        right[row][column] /= left[row][row];
      }
    }
    return right;
  }

  private static void pivot(double[][] left, double[][] right, int column) {
    int best = column;
    for (int row = column + 1; row < left.length; row++) {
      if (Math.abs(left[row][column]) > Math.abs(left[best][column])) {
        best = row;
      }
    }
    if (!(Math.abs(left[best][column]) > SMALLEST_PIVOT)) {
      throw new IllegalArgumentException(
          "The chain need not end: from some state no exit can be reached. Maybe a chance of 1 to"
              + " go on should be smaller.");
    }
    swap(left, column, best);
    swap(right, column, best);
  }

  private static void swap(double[][] rows, int one, int other) {
    double[] kept = rows[one];
    rows[one] = rows[other];
    rows[other] = kept;
  }

  private static void subtract(double[] row, double[] other, double factor) {
    for (int i = 0; i < row.length; i++) {
      row[i] -= factor * other[i];
    }
  }

  private static double[][] product(double[][] a, double[][] b) {
    double[][] product = new double[a.length][b[0].length];
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k < b.length; k++) {
        subtract(product[i], b[k], -a[i][k]);
      }
    }
    return product;
  }

  /**
   * How many states the chain has in which it goes on.
   *
   * @return 1 or more
   */
  public int states() {
    return visits.length;
  }

  /**
   * Expected visits to a state, the start counted.
   *
   * @param start where the chain starts
   * @param state the state that is visited
   * @return 0 or more
   */
  public double visits(int start, int state) {
    return visits[start][state];
  }

  /**
   * The chance to leave by an exit.
   *
   * @param start where the chain starts
   * @param exit the exit
   * @return from 0 to 1
   */
  public double exitChance(int start, int exit) {
    return exitChances[start][exit];
  }

  /**
   * Expected number of steps to the end.
   *
   * @param start where the chain starts
   * @return 1 or more
   */
  public double steps(int start) {
    double sum = 0;
    for (double each : visits[start]) {
      sum += each;
    }
    return sum;
  }

  /**
   * Variance of the number of steps to the end.
   *
   * @param start where the chain starts
   * @return 0 or more
   */
  public double stepsVariance(int start) {
    double sum = 0;
    for (int state = 0; state < visits.length; state++) {
      sum += 2 * visits[start][state] * steps(state);
    }
    return sum - steps(start) - steps(start) * steps(start);
  }

  /**
   * A change of the chances of one state; the entries sum to 0.
   *
   * @param state the state whose chances change
   * @param steps by how much the chance of each next state changes
   * @param exits by how much the chance of each exit changes
   */
  public record Change(int state, List<Double> steps, List<Double> exits) {
    /** Copies the lists. */
    public Change {
      steps = List.copyOf(steps);
      exits = List.copyOf(exits);
    }
  }

  /**
   * The exact derivative of the chance of an exit in the direction of a change.
   *
   * @param start where the chain starts
   * @param exit the exit
   * @param change how the chances of one state change
   * @return the derivative
   */
  public double slope(int start, int exit, Change change) {
    double gain = change.exits().get(exit);
    for (int state = 0; state < visits.length; state++) {
      gain += change.steps().get(state) * exitChances[state][exit];
    }
    return visits[start][change.state()] * gain;
  }
}
