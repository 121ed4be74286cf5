package rallywright.engine.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import rallywright.engine.club.PlayerId;
import rallywright.engine.score.Side;

class LadderPropertyTest {

  private static List<PlayerId> players(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(Rotations::id).toList();
  }

  @Example
  void twoCourts_winnersMoveUpAndLosersDown() {
    Ladder ladder = Ladder.start(RotationGame.DOUBLES, 2, players(8));
    assertThat(ladder.round().matches().get(0).a())
        .containsExactly(Rotations.id(1), Rotations.id(4));
    Ladder next = ladder.after(List.of(Side.A, Side.B));
    assertThat(next.round().matches().get(0).players())
        .containsExactlyInAnyOrder(
            Rotations.id(1), Rotations.id(4), Rotations.id(6), Rotations.id(7));
    assertThat(next.round().matches().get(0).a())
        .doesNotContainSequence(Rotations.id(1), Rotations.id(4));
    assertThat(next.round().number()).isEqualTo(2);
  }

  @Example
  void lanes_haveOneRungEach() {
    Ladder ladder =
        Ladder.start(RotationGame.LANES, 2, players(8))
            .after(List.of(Side.B, Side.A, Side.B, Side.A));
    assertThat(ladder.order())
        .containsExactly(
            Rotations.id(2),
            Rotations.id(3),
            Rotations.id(1),
            Rotations.id(6),
            Rotations.id(4),
            Rotations.id(7),
            Rotations.id(5),
            Rotations.id(8));
  }

  /** Whoever is the stronger always wins: the case in which players get stuck without a bound. */
  @Property(tries = 100)
  void nobody_isStuckAtAnEnd_andSitOutsStayEven(
      @ForAll @IntRange(min = 8, max = 24) int players,
      @ForAll @IntRange(min = 2, max = 6) int courts,
      @ForAll boolean lanes,
      @ForAll boolean strongestAlwaysWins,
      @ForAll long seed) {
    RotationGame game = lanes ? RotationGame.LANES : RotationGame.DOUBLES;
    Ladder ladder =
        Ladder.start(game, Math.min(courts, game.courtsFilledBy(players)), players(players));
    SplittableRandom dice = new SplittableRandom(seed);
    Map<PlayerId, Integer> sits = new HashMap<>();
    Map<PlayerId, Integer> top = new HashMap<>();
    Map<PlayerId, Integer> bottom = new HashMap<>();
    players(players).forEach(player -> sits.put(player, 0));
    for (int round = 1; round <= 15; round++) {
      List<RotationMatch> matches = ladder.round().matches();
      assertRun(top, matches.get(0).players());
      assertRun(bottom, matches.get(matches.size() - 1).players());
      ladder.round().sitting().forEach(player -> sits.merge(player, 1, Integer::sum));
      assertThat(matches.stream().mapToInt(match -> match.players().size()).sum())
          .isEqualTo(players - ladder.round().sitting().size());
      assertThat(Collections.max(sits.values()) - Collections.min(sits.values()))
          .isLessThanOrEqualTo(1);
      assertThat(ladder.order()).containsExactlyInAnyOrderElementsOf(players(players));
      ladder =
          ladder.after(
              matches.stream().map(match -> winner(match, strongestAlwaysWins, dice)).toList());
    }
  }

  private static Side winner(RotationMatch match, boolean strongest, SplittableRandom dice) {
    boolean a =
        strongest
            ? match.players().stream()
                .min((x, y) -> number(x) - number(y))
                .filter(match.a()::contains)
                .isPresent()
            : dice.nextBoolean();
    return a ? Side.A : Side.B;
  }

  private static int number(PlayerId player) {
    return Integer.parseInt(player.value());
  }

  private static void assertRun(Map<PlayerId, Integer> runs, List<PlayerId> there) {
    runs.keySet().retainAll(there);
    there.forEach(player -> runs.merge(player, 1, Integer::sum));
    assertThat(runs.values()).allMatch(run -> run <= Ladder.MOST_RUNNING);
  }

  @Example
  void wrongStartsAndWrongResults_areRefused() {
    assertThatThrownBy(() -> Ladder.start(RotationGame.DOUBLES, 3, players(8)))
        .hasMessageContaining("(3) must be at most 2");
    assertThatThrownBy(() -> Ladder.start(RotationGame.groupsOf(3), 2, players(8)))
        .hasMessageContaining("two sides");
    Ladder ladder = Ladder.start(RotationGame.DOUBLES, 2, players(8));
    assertThatThrownBy(() -> ladder.after(List.of(Side.A))).hasMessageContaining("(1)");
  }
}
