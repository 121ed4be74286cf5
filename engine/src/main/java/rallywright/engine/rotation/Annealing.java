package rallywright.engine.rotation;

import java.util.SplittableRandom;
import java.util.function.LongPredicate;

/**
 * Simulated annealing over swaps of two places in a round (Kirkpatrick, Gelatt and Vecchi 1983,
 * Optimization by simulated annealing, Science 220:671-680).
 *
 * <p>For the maintainer: the bench never gets worse than at the start, which is the best there is
 * ({@link BenchQueue}), so that sit-outs stay even whatever else is gained. A swap that would make
 * it worse is tried together with its counterpart in another round. The temperature falls
 * geometrically; both ends are assumptions of this project, found by trying.
 */
final class Annealing {

  /** Moves between two looks at the watch. */
  private static final int MOVES_BETWEEN_LOOKS = 4096;

  /** Chances of accepting a worse move are told apart in this many steps. */
  private static final int STEPS = 4096;

  private static final double[] EXPONENTIAL = new double[STEPS];

  static {
    for (int step = 0; step < STEPS; step++) {
      EXPONENTIAL[step] = -Math.log((step + 0.5) / STEPS);
    }
  }

  private final RotationProblem problem;
  private final Grid grid;
  private final SplittableRandom dice;
  private final long goal;
  private final int[] open;
  private double temperature;
  private long best;
  private int[][] bestLines;

  /** Where the temperature starts and ends, in thousandths of a point of the cost. */
  record Cooling(double hot, double cold) {

    /** From a start that is worth nothing, where repeated partners must be sorted out. */
    static final Cooling FROM_ANYWHERE = new Cooling(500_000, 12_000);

    /**
     * From a start that is worth nothing, where new partners come easily and balance is at stake.
     */
    static final Cooling FINE = new Cooling(100_000, 1_000);

    /** From a design that is nearly right. */
    static final Cooling FROM_A_DESIGN = new Cooling(60_000, 2_000);
  }

  Annealing(RotationProblem problem, int[][] start, SplittableRandom dice) {
    this.problem = problem;
    this.dice = dice;
    grid = new Grid(problem, start);
    goal = problem.leastMeetingCost() + WholeCost.of(problem, start).bench();
    open =
        java.util.stream.IntStream.range(problem.kept(), problem.rounds())
            .filter(round -> problem.seats(round) > 0 && hasChoice(round))
            .toArray();
    best = grid.cost();
    bestLines = grid.copyOfLines();
  }

  private boolean hasChoice(int round) {
    boolean mates = problem.game().form() == RotationGame.Form.MATES;
    return problem.present(round).length > problem.game().size() || !mates;
  }

  long best() {
    return best;
  }

  int[][] bestLines() {
    return bestLines;
  }

  /** The best that can be hoped for is found: nothing is gained by going on. */
  boolean isDone() {
    return best <= goal || open.length == 0;
  }

  /**
   * Goes on for some moves.
   *
   * @param watch is asked every few thousand moves, with the moves done, whether to go on
   * @return whether the watch let it run
   */
  boolean run(int moves, Cooling cooling, LongPredicate watch) {
    double ratio = cooling.cold() / cooling.hot();
    for (int done = 0; done < moves && !isDone(); done++) {
      if (done % MOVES_BETWEEN_LOOKS == 0) {
        temperature = cooling.hot() * Math.pow(ratio, (double) done / moves);
        if (!watch.test(done)) {
          return false;
        }
      }
      move();
      if (grid.cost() < best) {
        best = grid.cost();
        bestLines = grid.copyOfLines();
      }
    }
    return true;
  }

  private void move() {
    int round = open[dice.nextInt(open.length)];
    int place = dice.nextInt(grid.seats(round));
    int other = dice.nextInt(grid.width(round));
    if (place == other) {
      return;
    }
    if (other < grid.seats(round)) {
      long delta = grid.courtDelta(round, place, other);
      if (accepts(delta)) {
        grid.swap(round, place, other, delta);
      }
      return;
    }
    long bench = grid.benchDelta(round, place, other);
    if (bench > 0) {
      exchangeTwice(round, place, other, bench);
      return;
    }
    long delta = bench + grid.courtDelta(round, place, other);
    if (accepts(delta)) {
      grid.swap(round, place, other, delta);
    }
  }

  /** One sits out here instead of the other, and the other way round in another round. */
  private void exchangeTwice(int round, int place, int other, long bench) {
    int out = grid.player(round, place);
    int in = grid.player(round, other);
    int again = counterpart(round, out, in);
    if (again < 0) {
      return;
    }
    long first = bench + grid.courtDelta(round, place, other);
    grid.swap(round, place, other, first);
    int seat = grid.placeOf(again, in);
    int benched = grid.placeOf(again, out);
    long benchThen = grid.benchDelta(again, seat, benched);
    long second = benchThen + grid.courtDelta(again, seat, benched);
    if (bench + benchThen <= 0 && accepts(first + second)) {
      grid.swap(again, seat, benched, second);
    } else {
      grid.swap(round, place, other, -first);
    }
  }

  private int counterpart(int round, int out, int in) {
    int from = dice.nextInt(open.length);
    for (int step = 0; step < open.length; step++) {
      int again = open[(from + step) % open.length];
      int seat = grid.placeOf(again, in);
      if (again != round && grid.sitsIn(again, out) && seat >= 0 && seat < grid.seats(again)) {
        return again;
      }
    }
    return -1;
  }

  private boolean accepts(long delta) {
    return delta <= 0 || delta <= temperature * EXPONENTIAL[dice.nextInt(STEPS)];
  }
}
