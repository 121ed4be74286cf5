package rallywright.engine.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import rallywright.engine.club.PlayerId;

class RotationSearchPropertyTest {

  private static final int TRIES = 60;

  @Provide
  Arbitrary<RotationWish> wishes() {
    Arbitrary<RotationGame> games =
        Arbitraries.of(
            RotationGame.DOUBLES,
            RotationGame.LANES,
            RotationGame.LONE_LANES,
            RotationGame.groupsOf(3));
    return Combinators.combine(
            games,
            Arbitraries.integers().between(2, 40),
            Arbitraries.integers().between(1, 12),
            Arbitraries.integers().between(1, 14),
            Arbitraries.longs().between(0, 1000))
        .as(RotationSearchPropertyTest::wish);
  }

  /** A wish that is possible: enough players, no more courts than they fill. */
  private static RotationWish wish(
      RotationGame game, int players, int courts, int rounds, long seed) {
    int enough = Math.max(players, game.size());
    int filled = Math.min(courts, game.courtsFilledBy(enough));
    List<RotationPlayer> all =
        seed % 2 == 0 ? RotationWish.numbered(enough) : Rotations.players(enough, seed);
    return RotationWish.of(game, filled, rounds, all).withSeed(seed);
  }

  @Property(tries = TRIES)
  void everybody_isPlacedOnceOrSitsOut(@ForAll("wishes") RotationWish wish) {
    Rotations.assertEverybodyIsPlacedOnce(wish, Rotations.found(wish, Rotations.QUICK));
  }

  @Property(tries = TRIES)
  void sitOuts_differByOneAtMost(@ForAll("wishes") RotationWish wish) {
    RotationSchedule schedule = Rotations.found(wish, Rotations.QUICK);
    var sits = Rotations.sitOuts(wish, schedule).values();
    assertThat(Collections.max(sits) - Collections.min(sits)).isBetween(0, 1);
    assertThat(schedule.measures().mostSitOuts()).isEqualTo(Collections.max(sits));
    assertThat(schedule.measures().fewestSitOuts()).isEqualTo(Collections.min(sits));
  }

  @Property(tries = TRIES)
  void nobodySitsTwiceRunning_unlessMoreThanHalfSitOut(@ForAll("wishes") RotationWish wish) {
    RotationSchedule schedule = Rotations.found(wish, Rotations.QUICK);
    int twice = 0;
    for (int round = 1; round < wish.rounds(); round++) {
      Set<PlayerId> sat = new HashSet<>(schedule.rounds().get(round - 1).sitting());
      sat.retainAll(schedule.rounds().get(round).sitting());
      twice += sat.size();
    }
    int players = wish.players().size();
    int sitting = schedule.rounds().get(0).sitting().size();
    assertThat(twice)
        .isEqualTo(Math.max(0, 2 * sitting - players) * (wish.rounds() - 1))
        .isEqualTo(schedule.measures().twiceRunning());
  }

  @Property(tries = 20)
  void sameSeed_givesTheSameRotation(@ForAll("wishes") RotationWish wish) {
    assertThat(Rotations.found(wish, Rotations.QUICK))
        .isEqualTo(Rotations.found(wish, Rotations.QUICK));
  }

  /** One of these players once began on the same side in all four rounds. */
  @Example
  void sidesBegin_ofTwentyFourInFourRounds_areEven() {
    sidesBegin_aboutAsOftenAsNot(wish(RotationGame.DOUBLES, 24, 6, 4, 150));
  }

  @Property(tries = TRIES)
  void sidesBegin_aboutAsOftenAsNot(@ForAll("wishes") RotationWish wish) {
    RotationSchedule schedule = Rotations.found(wish, Rotations.QUICK);
    for (RotationPlayer player : wish.players()) {
      long first = 0;
      long second = 0;
      for (RotationRound round : schedule.rounds()) {
        for (RotationMatch match : round.matches()) {
          first += match.a().contains(player.id()) ? 1 : 0;
          second += match.b().contains(player.id()) ? 1 : 0;
        }
      }
      if (wish.game().size() != 3) {
        assertThat(Math.abs(first - second)).isLessThanOrEqualTo(3);
      }
    }
  }

  @Property(tries = TRIES)
  void pairKeptApart_withSeveralCourts_neverMeets(
      @ForAll @IntRange(min = 8, max = 30) int players,
      @ForAll @IntRange(min = 2, max = 5) int courts,
      @ForAll @IntRange(min = 1, max = 10) int rounds,
      @ForAll boolean lanes) {
    RotationGame game = lanes ? RotationGame.LANES : RotationGame.DOUBLES;
    RotationWish wish =
        wish(game, players, courts, rounds, players)
            .keepingApart(Rotations.pair(1, 2))
            .keepingApart(Rotations.pair(3, 7));
    RotationSchedule schedule = Rotations.found(wish, Rotations.QUICK);
    assertThat(schedule.measures().apartMeetings()).isZero();
    for (RotationRound round : schedule.rounds()) {
      for (RotationMatch match : round.matches()) {
        assertThat(match.players().containsAll(List.of(Rotations.id(1), Rotations.id(2))))
            .isFalse();
      }
    }
  }

  @Property(tries = TRIES)
  void replan_keepsWhatWasPlayed_andPlacesThoseWhoAreLeft(
      @ForAll("wishes") RotationWish wish, @ForAll @IntRange(min = 0, max = 14) int played) {
    int done = Math.min(played, wish.rounds());
    RotationSchedule before = Rotations.found(wish, Rotations.QUICK);
    List<RotationRound> kept = before.rounds().subList(0, done);
    RotationWish changed = wish.withPlayed(kept);
    if (wish.game().courtsFilledBy(wish.players().size() - 1) >= wish.courts()
        && wish.players().size() > wish.game().size()) {
      changed = changed.leaving(Rotations.id(1), done);
    }
    if (wish.players().size() < RotationWish.MOST_PLAYERS) {
      changed = changed.arriving(RotationPlayer.of(Rotations.id(99), 0.5).from(done + 1));
    }
    RotationSchedule after = Rotations.found(changed, Rotations.QUICK);
    assertThat(after.rounds().subList(0, done)).isEqualTo(kept);
    Rotations.assertEverybodyIsPlacedOnce(changed, after);
  }

  @Property(tries = TRIES)
  void incrementalCost_afterAnySwaps_isTheRecountedCost(
      @ForAll("wishes") RotationWish wish, @ForAll long seed) {
    RotationWish withWishes =
        wish.players().size() < 4
            ? wish
            : wish.keepingApart(Rotations.pair(1, 2)).keepingTogether(Rotations.pair(3, 4));
    RotationProblem problem = new RotationProblem(withWishes);
    int[][] start = BenchQueue.lines(problem, IntStream.range(0, problem.players()).toArray());
    Grid grid = new Grid(problem, start);
    SplittableRandom dice = new SplittableRandom(seed);
    for (int step = 0; step < 300; step++) {
      int round = dice.nextInt(problem.rounds());
      int place = dice.nextInt(grid.seats(round));
      int other = dice.nextInt(grid.width(round));
      if (place != other) {
        long delta = grid.courtDelta(round, place, other);
        delta += other < grid.seats(round) ? 0 : grid.benchDelta(round, place, other);
        grid.swap(round, place, other, delta);
        assertThat(grid.cost()).isEqualTo(WholeCost.of(problem, grid.copyOfLines()).total());
      }
    }
  }

  @Property(tries = 30)
  void search_neverEndsWorseThanItStarts(@ForAll("wishes") RotationWish wish) {
    RotationProblem problem = new RotationProblem(wish);
    int[][] start = BenchQueue.lines(problem, IntStream.range(0, problem.players()).toArray());
    Annealing annealing = new Annealing(problem, start, new SplittableRandom(wish.seed()));
    annealing.run(5000, Annealing.Cooling.FROM_ANYWHERE, moves -> true);
    WholeCost found = WholeCost.of(problem, annealing.bestLines());
    WholeCost begun = WholeCost.of(problem, start);
    assertThat(annealing.best()).isEqualTo(found.total()).isLessThanOrEqualTo(begun.total());
    assertThat(found.bench()).isLessThanOrEqualTo(begun.bench());
    assertThat(found.meetings()).isGreaterThanOrEqualTo(problem.leastMeetingCost());
  }
}
