package rallywright.engine.rotation;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Who sits out in each round: those who are most due.
 *
 * <p>Most due is who has sat out least for the rounds they were there; of those the one whose last
 * sit-out is longest ago. Who sat out in the round before is taken only where nobody else is left.
 * With everybody there throughout, sit-outs differ by one at most, and nobody sits out twice
 * running unless more than half sit out.
 */
final class BenchQueue {

  /** Shares of a sit-out that differ less than this are equal: sums of fractions are not exact. */
  private static final double EQUAL = 1e-9;

  private static final int NEVER = -2;

  private final RotationProblem problem;
  private final double[] due;
  private final int[] lastSat;

  private BenchQueue(RotationProblem problem) {
    this.problem = problem;
    due = new double[problem.players()];
    lastSat = new int[problem.players()];
    Arrays.fill(lastSat, NEVER);
  }

  /**
   * Lines of places for all rounds: seats first, then those who sit out.
   *
   * @param order the order in which equally due players are taken, which differs between runs
   */
  static int[][] lines(RotationProblem problem, int[] order) {
    BenchQueue queue = new BenchQueue(problem);
    int[][] lines = new int[problem.rounds()][];
    int[] rank = new int[order.length];
    for (int place = 0; place < order.length; place++) {
      rank[order[place]] = place;
    }
    for (int round = 0; round < lines.length; round++) {
      lines[round] =
          round < problem.kept() ? problem.present(round).clone() : queue.next(round, rank);
      queue.remember(round, lines[round]);
    }
    return lines;
  }

  private int[] next(int round, int[] rank) {
    int seats = problem.seats(round);
    int[] there = problem.present(round);
    double expected = (double) (there.length - seats) / there.length;
    List<Integer> byDue =
        IntStream.of(there)
            .boxed()
            .sorted(
                Comparator.comparing((Integer player) -> lastSat[player] == round - 1)
                    .thenComparing(player -> -Math.round((due[player] + expected) / EQUAL))
                    .thenComparing(player -> lastSat[player])
                    .thenComparing(player -> rank[player]))
            .toList();
    List<Integer> sitting = byDue.subList(0, there.length - seats);
    List<Integer> playing =
        byDue.subList(there.length - seats, there.length).stream()
            .sorted(Comparator.comparing(player -> rank[player]))
            .collect(Collectors.toList());
    playing.addAll(sitting);
    return playing.stream().mapToInt(Integer::intValue).toArray();
  }

  private void remember(int round, int[] line) {
    int seats = problem.seats(round);
    for (int place = 0; place < line.length; place++) {
      due[line[place]] += (double) (line.length - seats) / line.length;
      if (place >= seats) {
        due[line[place]] -= 1;
        lastSat[line[place]] = round;
      }
    }
  }
}
