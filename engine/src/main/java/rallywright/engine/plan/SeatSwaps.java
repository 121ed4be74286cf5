package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Groups and sitters of one stint where there are too many people, or too large groups, for an
 * exact search: those who are most due play, then two people change seats as long as that makes the
 * whole cheaper. The order of the tries is fixed, so the answer is always the same.
 */
final class SeatSwaps {

  private final Meetings meetings;
  private final DrillLine line;
  private final Shape shape;
  private final int[] seats;
  private final double[] prices;

  SeatSwaps(Meetings meetings, DrillLine line, List<Integer> players, Shape shape) {
    this.meetings = meetings;
    this.line = line;
    this.shape = shape;
    seats =
        players.stream()
            .sorted(Comparator.comparingDouble((Integer each) -> -meetings.sitting(each)))
            .mapToInt(Integer::intValue)
            .toArray();
    prices = new double[shape.groups() + 1];
    for (int group = 0; group < prices.length; group++) {
      prices[group] = price(group);
    }
  }

  /** The groups, those shared by three first; whoever is in none sits out. */
  List<List<Integer>> best() {
    while (improved()) {
      // Every pass makes the whole cheaper, and there are finitely many seatings.
    }
    List<List<Integer>> groups = new ArrayList<>();
    for (int group = 0; group < shape.groups(); group++) {
      if (price(group) < Meetings.IMPOSSIBLE) {
        groups.add(members(group));
      }
    }
    return groups;
  }

  private boolean improved() {
    boolean improved = false;
    for (int one = 0; one < seats.length; one++) {
      for (int other = one + 1; other < seats.length; other++) {
        int first = groupOf(one);
        int second = groupOf(other);
        if (first != second) {
          swap(one, other);
          double priceOfFirst = price(first);
          double priceOfSecond = price(second);
          if (priceOfFirst + priceOfSecond < prices[first] + prices[second] - 1e-9) {
            prices[first] = priceOfFirst;
            prices[second] = priceOfSecond;
            improved = true;
          } else {
            swap(one, other);
          }
        }
      }
    }
    return improved;
  }

  private void swap(int one, int other) {
    int kept = seats[one];
    seats[one] = seats[other];
    seats[other] = kept;
  }

  private int start(int group) {
    return group * shape.size() + Math.min(group, shape.threes());
  }

  /** The group of a seat; the bench has the number of the groups. */
  private int groupOf(int seat) {
    for (int group = 0; group < shape.groups(); group++) {
      if (seat < start(group + 1)) {
        return group;
      }
    }
    return shape.groups();
  }

  private List<Integer> members(int group) {
    List<Integer> members = new ArrayList<>();
    int end = group == shape.groups() ? seats.length : start(group + 1);
    for (int seat = start(group); seat < end; seat++) {
      members.add(seats[seat]);
    }
    return members;
  }

  private double price(int group) {
    if (group == shape.groups()) {
      return members(group).stream().mapToDouble(meetings::sitting).sum();
    }
    List<Integer> members = members(group);
    if (members.size() == 2) {
      return meetings.meeting(line, members.get(0), members.get(1));
    }
    return members.size() == 4
        ? meetings.meeting(line, Sides.best(meetings, line, members))
        : Sides.inTurn(line, members).stream()
            .mapToDouble(duel -> meetings.meeting(line, duel))
            .sum();
  }
}
