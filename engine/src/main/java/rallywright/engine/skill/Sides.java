package rallywright.engine.skill;

import java.util.List;

/**
 * Who plays whom: one or two players a side, by number. A pair plays as the mean of the two.
 *
 * @param a the players of side A
 * @param b the players of side B
 */
public record Sides(List<Integer> a, List<Integer> b) {
  /** Copies the lists and checks that there are one or two different players on each side. */
  public Sides {
    a = List.copyOf(a);
    b = List.copyOf(b);
    if (a.isEmpty() || b.isEmpty() || a.size() > 2 || b.size() > 2) {
      throw new IllegalArgumentException(
          "The sides have "
              + a.size()
              + " and "
              + b.size()
              + " players; each needs 1 or 2."
              + " Maybe name only those who played.");
    }
    if (isTwice(a) || isTwice(b) || meet(a, b)) {
      throw new IllegalArgumentException(
          "A player stands twice in "
              + a
              + " v "
              + b
              + "; nobody can play themselves."
              + " Maybe one number is another player's.");
    }
  }

  /**
   * A game of two.
   *
   * @param a player of side A
   * @param b player of side B
   * @return the sides
   */
  public static Sides of(int a, int b) {
    return new Sides(List.of(a), List.of(b));
  }

  private static boolean isTwice(List<Integer> players) {
    return players.size() == 2 && players.get(0).equals(players.get(1));
  }

  private static boolean meet(List<Integer> a, List<Integer> b) {
    for (int player : a) {
      if (b.contains(player)) {
        return true;
      }
    }
    return false;
  }
}
