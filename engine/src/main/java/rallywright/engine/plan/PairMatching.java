package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The cheapest pairs and sitters of one stint, exact, by going through all subsets of at most
 * {@value #MOST_PLAYERS} players.
 */
final class PairMatching {

  /** With more players there are too many subsets. */
  static final int MOST_PLAYERS = 12;

  private final Meetings meetings;
  private final DrillLine line;
  private final List<Integer> players;
  private final int most;
  private final double[][] cost;
  private final int[][] partner;

  PairMatching(Meetings meetings, DrillLine line, List<Integer> players, int most) {
    this.meetings = meetings;
    this.line = line;
    this.players = players;
    this.most = most;
    cost = new double[1 << players.size()][most + 1];
    partner = new int[1 << players.size()][most + 1];
  }

  List<List<Integer>> best() {
    double[][] meet = costsOfMeeting();
    for (int undecided = 1; undecided < cost.length; undecided++) {
      for (int pairs = 0; pairs <= most; pairs++) {
        decide(undecided, pairs, meet);
      }
    }
    List<List<Integer>> chosen = new ArrayList<>();
    int undecided = cost.length - 1;
    int pairs = most;
    while (undecided != 0) {
      int one = Integer.numberOfTrailingZeros(undecided);
      int other = partner[undecided][pairs];
      undecided &= ~(1 << one);
      if (other >= 0) {
        undecided &= ~(1 << other);
        pairs--;
        chosen.add(List.of(players.get(one), players.get(other)));
      }
    }
    return chosen;
  }

  private void decide(int undecided, int pairs, double[][] meet) {
    int one = Integer.numberOfTrailingZeros(undecided);
    int rest = undecided & ~(1 << one);
    double best = meetings.sitting(players.get(one)) + cost[rest][pairs];
    int with = -1;
    for (int other = one + 1; pairs > 0 && other < players.size(); other++) {
      if ((rest & (1 << other)) != 0) {
        double next = meet[one][other] + cost[rest & ~(1 << other)][pairs - 1];
        if (next < best) {
          best = next;
          with = other;
        }
      }
    }
    cost[undecided][pairs] = best;
    partner[undecided][pairs] = with;
  }

  private double[][] costsOfMeeting() {
    double[][] meet = new double[players.size()][players.size()];
    for (int i = 0; i < players.size(); i++) {
      for (int j = i + 1; j < players.size(); j++) {
        meet[i][j] = meetings.meeting(line, players.get(i), players.get(j));
      }
    }
    return meet;
  }
}
