package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Who meets whom in one game, by their places in the list of those present.
 *
 * @param a who begin on the first side
 * @param b who begin on the second side
 */
record Duel(List<Integer> a, List<Integer> b) {

  /** Copies the lists. */
  Duel {
    a = List.copyOf(a);
    b = List.copyOf(b);
  }

  static Duel of(int a, int b) {
    return new Duel(List.of(a), List.of(b));
  }

  Duel swapped() {
    return new Duel(b, a);
  }

  List<Integer> players() {
    List<Integer> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }
}
