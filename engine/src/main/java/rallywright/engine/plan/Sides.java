package rallywright.engine.plan;

import java.util.List;

/** Splits three or four who share a place into sides. */
final class Sides {

  private Sides() {}

  /** The cheapest of the three ways to make two teams of four. */
  static Duel best(Meetings meetings, DrillLine line, List<Integer> four) {
    Duel best = split(four, 1);
    for (int partner = 2; partner < four.size(); partner++) {
      Duel next = split(four, partner);
      if (meetings.meeting(line, next) < meetings.meeting(line, best)) {
        best = next;
      }
    }
    return best;
  }

  private static Duel split(List<Integer> four, int partner) {
    int one = partner == 1 ? 2 : 1;
    int other = partner == 3 ? 2 : 3;
    return new Duel(
        List.of(four.get(0), four.get(partner)), List.of(four.get(one), four.get(other)));
  }

  /** Three turns of three people: each is apart once; on a lane, each plays both roles once. */
  static List<Duel> inTurn(DrillLine line, List<Integer> three) {
    int a = three.get(0);
    int b = three.get(1);
    int c = three.get(2);
    if (line.players() == 2) {
      return List.of(Duel.of(a, b), Duel.of(b, c), Duel.of(c, a));
    }
    boolean twoFirst = line.layout().sides().a().stands().size() == 2;
    List<Duel> twos =
        List.of(
            new Duel(List.of(a, b), List.of(c)),
            new Duel(List.of(b, c), List.of(a)),
            new Duel(List.of(c, a), List.of(b)));
    return twoFirst ? twos : twos.stream().map(Duel::swapped).toList();
  }
}
