package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A mixed-doubles round robin for couples that do not partner each other.
 *
 * <p>Every two men oppose each other once, every two women too; each man has each woman but his own
 * as a partner once and as an opponent once. Man i and woman L(i, j) meet man j and woman L(j, i),
 * where L is a self-orthogonal Latin square (Berman D. R., Wakeling I. N., Complete mixed doubles
 * round robin tournaments, arXiv:1310.5240). None exists for 2, 3 and 6 couples (from memory).
 *
 * <p>For the maintainer: over a product of fields L(i, j) = m i + (1 - m) j is such a square if m,
 * 1 - m and 2 m - 1 have inverses. The games with the same i + j make one round. That covers
 * numbers of couples that are products of 4, 5, 7, 8, 9, 11, 13, 16, 17 and 19.
 */
public final class MixedDoubles {

  /** The sizes for which a square is built here. */
  private static final List<Integer> SIZES = List.of(4, 5, 7, 8, 9, 11, 13, 16, 17, 19, 20);

  private MixedDoubles() {}

  /**
   * One game; men and women are counted from 1, a couple has the same number.
   *
   * @param manA the man of side A
   * @param womanA the woman of side A
   * @param manB the man of side B
   * @param womanB the woman of side B
   */
  public record MixedGame(int manA, int womanA, int manB, int womanB) {}

  /**
   * The numbers of couples for which there is a schedule here.
   *
   * @return the numbers, rising
   */
  public static List<Integer> sizes() {
    return SIZES;
  }

  /**
   * The rounds of a schedule.
   *
   * @param couples the number of couples, one of {@link #sizes()}
   * @return the rounds; nobody plays twice in a round
   * @throws IllegalArgumentException for another number of couples
   */
  public static List<List<MixedGame>> rounds(int couples) {
    if (!SIZES.contains(couples)) {
      throw new IllegalArgumentException(
          "The number of couples (%d) must be one of %s. Maybe one couple more comes."
              .formatted(couples, SIZES));
    }
    CoupleField field = CoupleField.of(couples);
    TreeMap<Integer, List<MixedGame>> rounds = new TreeMap<>();
    for (int i = 0; i < couples; i++) {
      for (int j = i + 1; j < couples; j++) {
        MixedGame game = new MixedGame(i + 1, field.woman(i, j) + 1, j + 1, field.woman(j, i) + 1);
        rounds.computeIfAbsent(field.sum(i, j), unused -> new ArrayList<>()).add(game);
      }
    }
    return rounds.values().stream().map(List::copyOf).toList();
  }

  /** Which couples sit out in a round. */
  static List<Integer> sitting(List<MixedGame> round, int couples) {
    return IntStream.rangeClosed(1, couples)
        .filter(man -> round.stream().noneMatch(game -> game.manA() == man || game.manB() == man))
        .boxed()
        .toList();
  }
}
