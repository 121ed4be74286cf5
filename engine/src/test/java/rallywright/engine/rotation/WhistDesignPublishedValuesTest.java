package rallywright.engine.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every whist design against the definition, which is the reference: with v = 4k or 4k + 1 players
 * every two are partners once and opponents twice, nobody stands twice in a round, and with 4k + 1
 * everybody sits out once. Source of the definition and that designs exist: Anderson I., Whist
 * tournaments, Handbook of Combinatorial Designs, 2nd ed. 2007, VI.64 (from memory).
 */
class WhistDesignPublishedValuesTest {

  /**
   * Twelve players, published schedule: Wiseman J. D. A., Tournament designs: individual-pairs,
   * 2003/2004. Two letters against two letters.
   */
  private static final String TWELVE_PLAYERS =
      """
      EG:IJ LA:BH CF:DK
      LD:EK FI:GC HJ:AB
      IA:JF KB:DE LG:HC
      CE:GH LJ:KF AD:BI
      LB:CI DG:EA FH:JK
      GJ:HD IK:BC LE:FA
      AC:EF LH:ID JB:KG
      LK:AG BE:CJ DF:HI
      EH:FB GI:KA LC:DJ
      JA:CD LF:GB HK:IE
      LI:JE KC:AH BD:FG
      """;

  static Stream<Integer> sizes() {
    return WhistDesign.sizes();
  }

  @Test
  void designs_existForAllSizesUpToThirtyTwo() {
    assertThat(WhistDesign.sizes().toList())
        .isEqualTo(
            Stream.iterate(4, size -> size <= 32, size -> size + 1)
                .filter(size -> size % 4 < 2)
                .toList());
    assertThat(WhistDesign.of(6)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void design_ofAnySize_meetsTheDefinition(int players) {
    WhistDesign design = WhistDesign.of(players).orElseThrow();
    List<int[]> rounds =
        Stream.iterate(0, r -> r + 1).limit(design.rounds()).map(design::round).toList();
    assertThat(design.rounds()).isEqualTo(players % 4 == 0 ? players - 1 : players);
    assertWhist(players, rounds);
  }

  @Test
  void publishedScheduleOfTwelve_meetsTheDefinition() {
    List<int[]> rounds =
        TWELVE_PLAYERS
            .lines()
            .map(line -> line.replaceAll("[^A-L]", "").chars().map(c -> c - 'A').toArray())
            .toList();
    assertWhist(12, rounds);
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void search_withAWhistDesign_reachesItsOptimum(int players) {
    int rounds = players % 4 == 0 ? players - 1 : players;
    RotationWish wish =
        RotationWish.of(
            RotationGame.DOUBLES,
            Math.min(12, players / 4),
            rounds,
            RotationWish.numbered(players));
    RotationSchedule found = Rotations.found(wish);
    assertThat(found.measures().partnerRepeats()).isZero();
    assertThat(found.measures().opponentExcess()).isZero();
    assertThat(RotationSearch.cost(wish, found.rounds()))
        .isEqualTo(100.0 * players * (players - 1) / 2);
  }

  private static void assertWhist(int players, List<int[]> rounds) {
    int[][] partners = new int[players][players];
    int[][] opponents = new int[players][players];
    int[] sits = new int[players];
    for (int[] round : rounds) {
      Set<Integer> seen = new HashSet<>();
      Arrays.stream(round).forEach(player -> assertThat(seen.add(player)).isTrue());
      assertThat(seen).hasSize(players);
      int seats = players / 4 * 4;
      for (int seat = 0; seat < seats; seat++) {
        int table = seat / 4 * 4;
        for (int other = table; other < table + 4; other++) {
          int[][] counts = other / 2 == seat / 2 ? partners : opponents;
          counts[round[seat]][round[other]] += other == seat ? 0 : 1;
        }
      }
      Arrays.stream(round).skip(seats).forEach(player -> sits[player]++);
    }
    for (int one = 0; one < players; one++) {
      assertThat(sits[one]).isEqualTo(players % 4);
      for (int other = 0; other < players; other++) {
        assertThat(partners[one][other]).isEqualTo(one == other ? 0 : 1);
        assertThat(opponents[one][other]).isEqualTo(one == other ? 0 : 2);
      }
    }
  }
}
