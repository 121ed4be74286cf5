package rallywright.engine.rotation;

import rallywright.engine.rotation.RotationGame.Relation;

/**
 * All rounds of a rotation with counts, so that the cost of a swap is told without counting anew.
 *
 * <p>For the maintainer: a line holds the players of a round, group after group, then those who sit
 * out. Counts of meetings are kept for each ordered pair. A swap changes the meetings of two
 * players only; no pair gains and loses in the same swap, so the changes can be added up.
 */
final class Grid {

  private final RotationProblem problem;
  private final int players;
  private final int size;
  private final boolean mates;
  private final boolean[] close;
  private final int[] millilogits;
  private final long[] closeRepeat;
  private final long[] closeFlat;
  private final long[] acrossFlat;
  private final int[][] lines;
  private final int[] seats;
  private final int[][] placeOf;
  private final int[] closeCount;
  private final int[] acrossCount;
  private final int[] sits;
  private final boolean strengths;
  private long cost;

  Grid(RotationProblem problem, int[][] start) {
    this.problem = problem;
    players = problem.players();
    size = problem.game().size();
    mates = problem.game().form() == RotationGame.Form.MATES;
    close = new boolean[size * size];
    for (int seat = 0; seat < close.length; seat++) {
      close[seat] = problem.game().relation(seat / size, seat % size) == Relation.CLOSE;
    }
    millilogits = new int[players];
    for (int player = 0; player < players; player++) {
      millilogits[player] = problem.millilogits(player);
    }
    closeRepeat = problem.closeRepeat();
    closeFlat = problem.closeFlat();
    acrossFlat = problem.acrossFlat();
    lines = new int[start.length][];
    seats = new int[start.length];
    placeOf = new int[start.length][players];
    closeCount = new int[players * players];
    acrossCount = new int[players * players];
    sits = new int[players];
    strengths = problem.hasStrengths();
    for (int round = 0; round < start.length; round++) {
      seats[round] = problem.seats(round);
      enter(round, start[round]);
    }
    cost = WholeCost.of(problem, lines).total();
  }

  private void enter(int round, int[] line) {
    lines[round] = line.clone();
    java.util.Arrays.fill(placeOf[round], -1);
    for (int place = 0; place < line.length; place++) {
      placeOf[round][line[place]] = place;
      sits[line[place]] += place < seats[round] ? 0 : 1;
      for (int mate = place + 1; place < seats[round] && mate < groupEnd(place); mate++) {
        count(place % size, mate % size, line[place], line[mate], 1);
      }
    }
  }

  private int groupEnd(int place) {
    return place - place % size + size;
  }

  private void count(int seat, int other, int player, int mate, int by) {
    int[] counts = close[seat * size + other] ? closeCount : acrossCount;
    counts[player * players + mate] += by;
    counts[mate * players + player] += by;
  }

  long cost() {
    return cost;
  }

  int seats(int round) {
    return seats[round];
  }

  int width(int round) {
    return lines[round].length;
  }

  int player(int round, int place) {
    return lines[round][place];
  }

  int placeOf(int round, int player) {
    return placeOf[round][player];
  }

  boolean sitsIn(int round, int player) {
    return round >= 0 && round < lines.length && placeOf[round][player] >= seats[round];
  }

  int[][] copyOfLines() {
    int[][] copy = new int[lines.length][];
    for (int round = 0; round < copy.length; round++) {
      copy[round] = lines[round].clone();
    }
    return copy;
  }

  /** By how much meetings and balance change if two places swap; the first is a seat. */
  long courtDelta(int round, int place, int other) {
    int[] line = lines[round];
    int p = line[place];
    int q = line[other];
    boolean seated = other < seats[round];
    if (seated && place / size == other / size) {
      return withinGroup(line, place, other) + balanceDelta(line, place, other, true);
    }
    long delta = exchange(line, place, p, q);
    if (seated) {
      delta += exchange(line, other, q, p);
    }
    return delta + balanceDelta(line, place, other, seated);
  }

  private long exchange(int[] line, int place, int out, int in) {
    int first = place - place % size;
    int seat = place - first;
    long delta = 0;
    for (int mate = 0; mate < size; mate++) {
      if (mate != seat) {
        int with = line[first + mate];
        delta +=
            close[seat * size + mate]
                ? closeJoin(in, with) - closeLeave(out, with)
                : acrossJoin(in, with) - acrossLeave(out, with);
      }
    }
    return delta;
  }

  private long withinGroup(int[] line, int place, int other) {
    int first = place - place % size;
    int p = line[place];
    int q = line[other];
    long delta = 0;
    for (int mate = 0; mate < size; mate++) {
      boolean closeToP = close[(place - first) * size + mate];
      boolean closeToQ = close[(other - first) * size + mate];
      if (closeToP != closeToQ && first + mate != place && first + mate != other) {
        int with = line[first + mate];
        int leaving = closeToP ? p : q;
        int joining = closeToP ? q : p;
        delta += acrossJoin(leaving, with) - closeLeave(leaving, with);
        delta += closeJoin(joining, with) - acrossLeave(joining, with);
      }
    }
    return delta;
  }

  private long closeJoin(int player, int mate) {
    int cell = player * players + mate;
    return closeRepeat[cell] * closeCount[cell] + closeFlat[cell];
  }

  private long closeLeave(int player, int mate) {
    int cell = player * players + mate;
    return closeRepeat[cell] * (closeCount[cell] - 1) + closeFlat[cell];
  }

  private long acrossJoin(int player, int mate) {
    int cell = player * players + mate;
    return RotationCost.OPPONENT_AGAIN * acrossCount[cell] + acrossFlat[cell];
  }

  private long acrossLeave(int player, int mate) {
    int cell = player * players + mate;
    return RotationCost.OPPONENT_AGAIN * (acrossCount[cell] - 1) + acrossFlat[cell];
  }

  private long balanceDelta(int[] line, int place, int other, boolean seated) {
    if (!strengths) {
      return 0;
    }
    boolean two = seated && place / size != other / size;
    long before = balance(line, place) + (two ? balance(line, other) : 0);
    swap(line, place, other);
    long after = balance(line, place) + (two ? balance(line, other) : 0);
    swap(line, place, other);
    return after - before;
  }

  private static void swap(int[] line, int place, int other) {
    int kept = line[place];
    line[place] = line[other];
    line[other] = kept;
  }

  private long balance(int[] line, int place) {
    return WholeCost.balance(line, place - place % size, size, mates, millilogits);
  }

  /** By how much the sit-outs change if a seat and a bench place swap. */
  long benchDelta(int round, int seat, int bench) {
    int out = lines[round][seat];
    int in = lines[round][bench];
    return problem.sittingCost(out, sits[out] + 1)
        - problem.sittingCost(out, sits[out])
        + problem.sittingCost(in, sits[in] - 1)
        - problem.sittingCost(in, sits[in])
        + RotationCost.TWICE_RUNNING * (neighbours(round, out) - neighbours(round, in));
  }

  private int neighbours(int round, int player) {
    return (sitsIn(round - 1, player) ? 1 : 0) + (sitsIn(round + 1, player) ? 1 : 0);
  }

  /** Swaps two places of a round; the first is a seat. */
  void swap(int round, int place, int other, long delta) {
    int[] line = lines[round];
    boolean seated = other < seats[round];
    countGroup(line, place, -1);
    if (seated && place / size != other / size) {
      countGroup(line, other, -1);
    }
    int p = line[place];
    int q = line[other];
    line[place] = q;
    line[other] = p;
    placeOf[round][p] = other;
    placeOf[round][q] = place;
    countGroup(line, place, 1);
    if (seated && place / size != other / size) {
      countGroup(line, other, 1);
    }
    if (!seated) {
      sits[p]++;
      sits[q]--;
    }
    cost += delta;
  }

  private void countGroup(int[] line, int place, int by) {
    int first = place - place % size;
    for (int seat = 0; seat < size; seat++) {
      for (int mate = seat + 1; mate < size; mate++) {
        count(seat, mate, line[first + seat], line[first + mate], by);
      }
    }
  }
}
