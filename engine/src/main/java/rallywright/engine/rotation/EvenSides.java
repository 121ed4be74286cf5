package rallywright.engine.rotation;

import java.util.Arrays;

/**
 * Everybody begins about as often as not, and plays on each court about as often.
 *
 * <p>A pass over finished rounds: sides of a match are exchanged, and matches of a round change
 * courts, as long as that makes the counts more even. Nothing else changes.
 */
final class EvenSides {

  private static final int MOST_PASSES = 20;

  private final RotationProblem problem;
  private final int size;
  private final int[][] lines;
  private final int[][] onCourt;
  private final int[] ahead;

  private EvenSides(RotationProblem problem, int[][] lines) {
    this.problem = problem;
    this.size = problem.game().size();
    this.lines = lines;
    int courts = Arrays.stream(lines).mapToInt(line -> line.length / size + 1).max().orElse(1);
    onCourt = new int[problem.players()][courts];
    ahead = new int[problem.players()];
    for (int round = 0; round < lines.length; round++) {
      for (int first = 0; first < problem.seats(round); first += size) {
        count(round, first, first, 1);
      }
    }
  }

  /** The same lines with sides and courts evened out; rounds played already stay as they are. */
  static int[][] of(RotationProblem problem, int[][] lines) {
    int[][] copy = Arrays.stream(lines).map(int[]::clone).toArray(int[][]::new);
    EvenSides pass = new EvenSides(problem, copy);
    boolean improves = true;
    for (int turn = 0; turn < MOST_PASSES && improves; turn++) {
      improves = pass.improves();
    }
    return copy;
  }

  private boolean improves() {
    boolean improved = false;
    for (int round = problem.kept(); round < lines.length; round++) {
      for (int first = 0; first < problem.seats(round); first += size) {
        improved |= exchangesSides(round, first);
        for (int other = first + size; other < problem.seats(round); other += size) {
          improved |= exchangesCourts(round, first, other);
        }
      }
    }
    return improved;
  }

  private boolean exchangesSides(int round, int first) {
    if (problem.game().form() == RotationGame.Form.MATES && size != 2) {
      return false;
    }
    int[] line = lines[round];
    int half = size / 2;
    long gain = 0;
    for (int seat = 0; seat < half; seat++) {
      int a = ahead[line[first + seat]];
      int b = ahead[line[first + half + seat]];
      gain += unevenness(a) - unevenness(a - 2) + unevenness(b) - unevenness(b + 2);
    }
    if (gain <= 0) {
      return false;
    }
    count(round, first, first, -1);
    for (int seat = 0; seat < half; seat++) {
      int kept = line[first + seat];
      line[first + seat] = line[first + half + seat];
      line[first + half + seat] = kept;
    }
    count(round, first, first, 1);
    return true;
  }

  /** Grows so steeply that nobody is left on one side for the good of many others. */
  private static long unevenness(int ahead) {
    long square = (long) ahead * ahead;
    return square * square;
  }

  private boolean exchangesCourts(int round, int first, int other) {
    int here = courtOf(first);
    int there = courtOf(other);
    int gain = 0;
    for (int seat = 0; seat < size; seat++) {
      int p = lines[round][first + seat];
      int q = lines[round][other + seat];
      gain += onCourt[p][here] - onCourt[p][there] - 1;
      gain += onCourt[q][there] - onCourt[q][here] - 1;
    }
    if (here == there || gain <= 0) {
      return false;
    }
    count(round, first, first, -1);
    count(round, other, other, -1);
    for (int seat = 0; seat < size; seat++) {
      int kept = lines[round][first + seat];
      lines[round][first + seat] = lines[round][other + seat];
      lines[round][other + seat] = kept;
    }
    count(round, first, first, 1);
    count(round, other, other, 1);
    return true;
  }

  private int courtOf(int first) {
    return first / size / problem.game().perCourt();
  }

  private void count(int round, int first, int at, int by) {
    for (int seat = 0; seat < size; seat++) {
      int player = lines[round][first + seat];
      onCourt[player][courtOf(at)] += by;
      ahead[player] += seat < size / 2 ? by : -by;
    }
  }
}
