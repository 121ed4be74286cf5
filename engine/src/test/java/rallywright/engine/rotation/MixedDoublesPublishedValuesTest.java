package rallywright.engine.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.rotation.MixedDoubles.MixedGame;

/**
 * Schedules against the definition of a spouse-avoiding mixed-doubles round robin (Berman and
 * Wakeling, arXiv:1310.5240) and against the games of two squares that were verified by a program
 * of their own: for 4 couples, and for 5 with L(i, j) = 2 i - j modulo 5.
 */
class MixedDoublesPublishedValuesTest {

  private static final String FOUR =
      "M1F4 v M2F3, M1F2 v M3F4, M1F3 v M4F2, M2F4 v M3F1, M2F1 v M4F3, M3F2 v M4F1";

  private static final String FIVE =
      "M1F5 v M2F3, M1F4 v M3F5, M1F3 v M4F2, M1F2 v M5F4, M2F1 v M3F4, M2F5 v M4F1,"
          + " M2F4 v M5F3, M3F2 v M4F5, M3F1 v M5F2, M4F3 v M5F1";

  static Stream<Integer> sizes() {
    return MixedDoubles.sizes().stream();
  }

  @Test
  void fourAndFiveCouples_playTheVerifiedGames() {
    assertThat(games(4)).isEqualTo(read(FOUR));
    assertThat(games(5)).isEqualTo(read(FIVE));
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void schedule_ofAnySize_meetsTheDefinition(int couples) {
    Map<String, Integer> times = new HashMap<>();
    for (List<MixedGame> round : MixedDoubles.rounds(couples)) {
      Set<Integer> men = new HashSet<>();
      Set<Integer> women = new HashSet<>();
      for (MixedGame game : round) {
        assertThat(men.add(game.manA()) && men.add(game.manB())).isTrue();
        assertThat(women.add(game.womanA()) && women.add(game.womanB())).isTrue();
        count(times, "men", game.manA(), game.manB());
        count(times, "women", game.womanA(), game.womanB());
        times.merge("partners " + game.manA() + " " + game.womanA(), 1, Integer::sum);
        times.merge("partners " + game.manB() + " " + game.womanB(), 1, Integer::sum);
        times.merge("opponents " + game.manA() + " " + game.womanB(), 1, Integer::sum);
        times.merge("opponents " + game.manB() + " " + game.womanA(), 1, Integer::sum);
      }
      assertThat(men).isEqualTo(women);
    }
    int pairs = couples * (couples - 1);
    assertThat(times).hasSize(3 * pairs).allSatisfy((what, often) -> assertThat(often).isOne());
    assertThat(times.keySet()).noneMatch(what -> what.matches("(partners|opponents) (\\d+) \\2"));
  }

  @Test
  void sitOuts_areEven() {
    for (int couples : MixedDoubles.sizes()) {
      Map<Integer, Integer> sits = new HashMap<>();
      MixedDoubles.rounds(couples)
          .forEach(
              round ->
                  MixedDoubles.sitting(round, couples)
                      .forEach(couple -> sits.merge(couple, 1, Integer::sum)));
      assertThat(Set.copyOf(sits.values())).hasSizeLessThanOrEqualTo(1);
      assertThat(sits.size()).isIn(0, couples);
    }
  }

  @Test
  void otherNumbersOfCouples_areRefused() {
    for (int couples : List.of(0, 2, 3, 6, 10)) {
      assertThatThrownBy(() -> MixedDoubles.rounds(couples))
          .hasMessageContaining("(" + couples + ")")
          .hasMessageContaining("Maybe");
    }
  }

  private static void count(Map<String, Integer> times, String what, int one, int other) {
    String pair = Math.min(one, other) + " " + Math.max(one, other);
    times.merge(what + " " + pair, 1, Integer::sum);
  }

  private static Set<MixedGame> games(int couples) {
    return MixedDoubles.rounds(couples).stream().flatMap(List::stream).collect(Collectors.toSet());
  }

  private static Set<MixedGame> read(String text) {
    Set<MixedGame> games = new HashSet<>();
    for (String game : text.split(", ", -1)) {
      int[] n =
          Pattern.compile("\\d+")
              .matcher(game)
              .results()
              .map(MatchResult::group)
              .mapToInt(Integer::parseInt)
              .toArray();
      games.add(new MixedGame(n[0], n[1], n[2], n[3]));
    }
    return games;
  }
}
