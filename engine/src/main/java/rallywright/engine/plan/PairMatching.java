package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The cheapest pairs and sitters of one stint, exact, by going through all subsets of at most
 * {@value #MOST_PLAYERS} players.
 *
 * <p>For the maintainer: the first who is undecided sits or meets another, so only some subsets are
 * ever left over, each with some numbers of pairs to come; only those are looked at.
 */
final class PairMatching {

  /** With more players there are too many subsets. */
  static final int MOST_PLAYERS = 12;

  private final List<Integer> players;
  private final int most;
  private final double[] sits;
  private final double[][] meets;
  private final double[][] cost;
  private final int[][] partner;

  PairMatching(Meetings meetings, DrillLine line, List<Integer> players, int most) {
    this.players = players;
    this.most = most;
    sits = players.stream().mapToDouble(meetings::sitting).toArray();
    meets = new double[players.size()][players.size()];
    for (int i = 0; i < players.size(); i++) {
      for (int j = i + 1; j < players.size(); j++) {
        meets[i][j] = meetings.meeting(line, players.get(i), players.get(j));
      }
    }
    cost = new double[most + 1][1 << players.size()];
    partner = new int[most + 1][1 << players.size()];
  }

  List<List<Integer>> best() {
    int[] pairsLeft = pairsLeft();
    for (int undecided = 1; undecided < pairsLeft.length; undecided++) {
      for (int pairs = 0; pairsLeft[undecided] >> pairs != 0; pairs++) {
        if ((pairsLeft[undecided] >> pairs & 1) != 0) {
          decide(undecided, pairs);
        }
      }
    }
    List<List<Integer>> chosen = new ArrayList<>();
    int undecided = pairsLeft.length - 1;
    int pairs = most;
    while (undecided != 0) {
      int one = Integer.numberOfTrailingZeros(undecided);
      int other = partner[pairs][undecided];
      undecided &= ~(1 << one);
      if (other >= 0) {
        undecided &= ~(1 << other);
        pairs--;
        chosen.add(List.of(players.get(one), players.get(other)));
      }
    }
    return chosen;
  }

  /** For each subset that can be left over, with how many pairs to come, as bits. */
  private int[] pairsLeft() {
    int[] left = new int[1 << players.size()];
    left[left.length - 1] = 1 << most;
    for (int undecided = left.length - 1; undecided > 0; undecided--) {
      int rest = undecided & (undecided - 1);
      left[rest] |= left[undecided];
      int afterPair = left[undecided] >> 1;
      for (int others = afterPair == 0 ? 0 : rest; others != 0; others &= others - 1) {
        left[rest & ~Integer.lowestOneBit(others)] |= afterPair;
      }
    }
    return left;
  }

  private void decide(int undecided, int pairs) {
    int one = Integer.numberOfTrailingZeros(undecided);
    int rest = undecided & (undecided - 1);
    double best = sits[one] + cost[pairs][rest];
    int with = -1;
    if (pairs > 0) {
      double[] after = cost[pairs - 1];
      double[] meet = meets[one];
      for (int others = rest; others != 0; others &= others - 1) {
        int other = Integer.numberOfTrailingZeros(others);
        double next = meet[other] + after[rest & ~(1 << other)];
        if (next < best) {
          best = next;
          with = other;
        }
      }
    }
    cost[pairs][undecided] = best;
    partner[pairs][undecided] = with;
  }
}
