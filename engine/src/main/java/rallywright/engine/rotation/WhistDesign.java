package rallywright.engine.rotation;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whist tournaments: every two are partners once and opponents twice.
 *
 * <p>They exist for 4k and 4k + 1 players (Anderson I., Whist tournaments, in: Handbook of
 * Combinatorial Designs, 2nd ed. 2007, chapter VI.64, from memory). One base round is developed:
 * for 4k players modulo 4k − 1 with the last label fixed; for 4k + 1 modulo 4k + 1, where player j
 * sits out in round j; for 9 and 25 over pairs modulo 3 and 5. The base rounds were found by search
 * for this project; the tests check every design.
 */
final class WhistDesign {

  /** In each base round four labels are a table: the first two against the last two. */
  private static final Map<Integer, String> BASES =
      Map.ofEntries(
          Map.entry(4, "3 0 1 2"),
          Map.entry(5, "1 4 2 3"),
          Map.entry(8, "7 0 1 3 2 6 4 5"),
          Map.entry(9, "1 2 5 7 3 6 4 8"),
          Map.entry(12, "11 0 7 10 1 2 4 6 3 8 5 9"),
          Map.entry(13, "1 5 8 10 2 3 4 11 6 9 7 12"),
          Map.entry(16, "15 0 2 6 1 13 5 10 3 9 7 8 4 11 12 14"),
          Map.entry(17, "1 11 3 16 2 10 13 14 4 6 7 12 5 8 9 15"),
          Map.entry(20, "19 0 9 13 1 2 3 16 4 12 10 15 5 7 8 17 6 18 11 14"),
          Map.entry(21, "1 7 5 12 2 6 3 11 4 16 8 18 9 14 15 17 10 13 19 20"),
          Map.entry(24, "23 0 5 10 1 18 6 9 2 14 8 12 3 16 17 19 4 11 7 15 13 22 20 21"),
          Map.entry(25, "1 4 2 3 5 20 10 15 8 22 11 19 23 7 16 14 12 18 24 6 21 9 17 13"),
          Map.entry(
              28, "27 0 5 25 1 15 2 24 3 13 21 23 4 20 17 26 6 14 12 18 7 11 10 22 8 9 16 19"),
          Map.entry(
              29, "1 28 12 17 2 27 24 5 4 25 19 10 8 21 9 20 16 13 18 11 3 26 7 22 6 23 14 15"),
          Map.entry(
              32,
              "31 0 18 30 1 3 20 25 2 12 24 28 4 29 6 19 5 21 11 22 7 14 10 27 8 9 13 16"
                  + " 15 23 17 26"));

  private final int players;
  private final int[] base;

  private WhistDesign(int players, int[] base) {
    this.players = players;
    this.base = base;
  }

  static Optional<WhistDesign> of(int players) {
    return Optional.ofNullable(BASES.get(players))
        .map(text -> Stream.of(text.split(" ")).mapToInt(Integer::parseInt).toArray())
        .map(base -> new WhistDesign(players, base));
  }

  static Stream<Integer> sizes() {
    return BASES.keySet().stream().sorted();
  }

  /** Rounds until everybody was everybody's partner. */
  int rounds() {
    return players % 4 == 0 ? players - 1 : players;
  }

  /** The labels of one round: tables of four, then who sits out. */
  int[] round(int number) {
    int shift = number % rounds();
    int[] line = Arrays.copyOf(base, players);
    for (int place = 0; place < base.length; place++) {
      line[place] = shifted(base[place], shift);
    }
    if (base.length < players) {
      line[players - 1] = shifted(0, shift);
    }
    return line;
  }

  private int shifted(int label, int shift) {
    if (players % 4 == 0) {
      return label == players - 1 ? label : (label + shift) % (players - 1);
    }
    if (players == 9 || players == 25) {
      int side = players == 9 ? 3 : 5;
      int high = (label / side + shift / side) % side;
      int low = (label % side + shift % side) % side;
      return side * high + low;
    }
    return (label + shift) % players;
  }
}
