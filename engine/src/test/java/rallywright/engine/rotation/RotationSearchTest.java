package rallywright.engine.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

class RotationSearchTest {

  private static final RotationWish THIRTEEN =
      RotationWish.of(RotationGame.DOUBLES, 3, 8, RotationWish.numbered(13));

  /**
   * Social golfer cases: groups in which no two meet twice exist for so many rounds (Sellmann M.,
   * and Triska M., tables of the social golfer problem): 4 groups of 4 for 5 rounds, 3 of 3 for 4,
   * 5 of 3 for 7.
   */
  @ParameterizedTest
  @CsvSource({"4, 4, 5", "3, 3, 4", "5, 3, 7"})
  void groups_ofTheSocialGolferTables_neverMeetTwice(int groups, int size, int rounds) {
    for (long seed = 1; seed <= 3; seed++) {
      RotationWish wish =
          RotationWish.of(
                  RotationGame.groupsOf(size), groups, rounds, RotationWish.numbered(groups * size))
              .withSeed(seed);
      RotationSchedule schedule = Rotations.found(wish);
      assertThat(schedule.measures().partnerRepeats()).isZero();
      assertThat(RotationSearch.cost(wish, schedule.rounds())).isZero();
    }
  }

  @Test
  void lanes_ofEightForSevenRounds_areARoundRobin() {
    RotationWish wish = RotationWish.of(RotationGame.LANES, 2, 7, RotationWish.numbered(8));
    RotationSchedule schedule = Rotations.found(wish);
    assertThat(schedule.measures().partnerRepeats()).isZero();
    assertThat(schedule.rounds().get(0).matches())
        .extracting(match -> match.court() + "." + match.lane())
        .containsExactly("1.1", "1.2", "2.1", "2.2");
  }

  @Test
  void strengths_makeMatchesEvener_thanNewPartnersAlone() {
    List<RotationPlayer> players = Rotations.players(16, 7);
    RotationWish uneven = RotationWish.of(RotationGame.DOUBLES, 4, 6, players);
    RotationWish blind = uneven.withPlayers(RotationWish.numbered(16));
    double with = Rotations.found(uneven).measures().worstDifference();
    double without = RotationMeasures.of(uneven, Rotations.found(blind).rounds()).worstDifference();
    assertThat(with).isLessThan(without).isLessThan(1.0);
  }

  @Test
  void unevenMatch_getsTheHeadStartThatMakesItFair() {
    List<RotationPlayer> two =
        List.of(RotationPlayer.of(Rotations.id(1), 1.0), RotationPlayer.of(Rotations.id(2), -0.5));
    RotationWish wish =
        RotationWish.of(RotationGame.LANES, 1, 2, two).withFormat(GameFormat.DRILL_GAME);
    RotationMatch match = Rotations.found(wish).rounds().get(0).matches().get(0);
    boolean strongFirst = match.a().contains(Rotations.id(1));
    double strongWins = 1 / (1 + Math.exp(-1.5));
    Probability a = Probability.of(strongFirst ? strongWins : 1 - strongWins);
    Score start = Score.of(match.headStart().a(), match.headStart().b());
    double fair =
        GameOdds.of(GameFormat.DRILL_GAME.withStart(start), RallyChances.ofRally(a))
            .winChance(Side.A);
    assertThat(start.a() + start.b()).isPositive();
    assertThat(strongFirst ? start.a() : start.b()).isZero();
    assertThat(match.headStart().winA()).isCloseTo(fair, within(1e-12));
    assertThat(fair).isCloseTo(0.5, within(0.2));
  }

  @Test
  void evenMatch_getsNoHeadStart() {
    assertThat(Rotations.found(THIRTEEN).rounds())
        .flatExtracting(RotationRound::matches)
        .extracting(RotationMatch::headStart)
        .containsOnly(RotationMatch.EVEN);
  }

  @Test
  void pairKeptTogether_arePartnersWheneverBothPlay() {
    RotationWish wish = THIRTEEN.keepingTogether(Rotations.pair(2, 9));
    RotationSchedule schedule = Rotations.found(wish);
    int asPartners = 0;
    for (RotationRound round : schedule.rounds()) {
      for (RotationMatch match : round.matches()) {
        boolean both = match.players().containsAll(List.of(Rotations.id(2), Rotations.id(9)));
        boolean partners =
            List.of(match.a(), match.b()).stream()
                .anyMatch(side -> side.containsAll(List.of(Rotations.id(2), Rotations.id(9))));
        assertThat(both).isEqualTo(partners);
        asPartners += partners ? 1 : 0;
      }
    }
    assertThat(asPartners).isGreaterThanOrEqualTo(6);
    assertThat(schedule.measures().togetherMisses()).isEqualTo(8 - asPartners);
  }

  @Test
  void playerLeavesAfterRoundFour_andAnotherComes_theRestIsPlannedAnew() {
    RotationSchedule before = Rotations.found(THIRTEEN);
    RotationWish changed =
        THIRTEEN
            .withPlayed(before.rounds().subList(0, 4))
            .leaving(Rotations.id(5), 4)
            .arriving(RotationPlayer.of(Rotations.id(14), 0).from(6));
    RotationSchedule after = Rotations.found(changed);
    Rotations.assertEverybodyIsPlacedOnce(changed, after);
    assertThat(after.rounds().subList(0, 4)).isEqualTo(before.rounds().subList(0, 4));
    assertThat(after.rounds().get(4).sitting()).isEmpty();
    assertThat(after.measures().partnerRepeats()).isZero();
    assertThat(after.measures().twiceRunning()).isZero();
  }

  @Test
  void lateComer_sitsOutNoMoreThanTheOthers() {
    List<RotationPlayer> players = new ArrayList<>(RotationWish.numbered(10));
    players.set(9, players.get(9).from(5));
    RotationWish wish = RotationWish.of(RotationGame.DOUBLES, 2, 12, players);
    RotationSchedule schedule = Rotations.found(wish);
    assertThat(Rotations.sitOuts(wish, schedule).get(Rotations.id(10))).isBetween(1, 2);
    assertThat(schedule.measures().mostSitOuts()).isLessThanOrEqualTo(3);
    assertThat(schedule.measures().twiceRunning()).isZero();
  }

  @Test
  void tooFewForAMatch_inSomeRounds_justSitOut() {
    List<RotationPlayer> players =
        RotationWish.numbered(6).stream()
            .map(player -> player.id().equals(Rotations.id(1)) ? player : player.from(3))
            .toList();
    RotationWish wish = RotationWish.of(RotationGame.DOUBLES, 1, 4, players);
    RotationSchedule schedule = Rotations.found(wish);
    assertThat(schedule.rounds().get(0).matches()).isEmpty();
    assertThat(schedule.rounds().get(0).sitting()).containsExactly(Rotations.id(1));
    Rotations.assertEverybodyIsPlacedOnce(wish, schedule);
  }

  @Test
  void watch_seesProgressAndStopsTheSearch() {
    List<SearchProgress> seen = new ArrayList<>();
    RotationWish wish = RotationWish.of(RotationGame.DOUBLES, 4, 8, Rotations.players(18, 3));
    RotationAnswer answer =
        RotationSearch.find(
            wish,
            SearchEffort.THOROUGH,
            progress -> {
              seen.add(progress);
              return seen.size() < 5 ? SearchWatch.Verdict.GO_ON : SearchWatch.Verdict.STOP;
            });
    assertThat(seen).hasSize(5);
    assertThat(seen).extracting(SearchProgress::share).isSorted().allMatch(share -> share < 1);
    assertThat(seen.get(4).cost()).isLessThanOrEqualTo(seen.get(0).cost());
    RotationSchedule soFar = seen.get(4).best().get();
    Rotations.assertEverybodyIsPlacedOnce(wish, soFar);
    assertThat(((RotationAnswer.Found) answer).schedule()).isEqualTo(soFar);
  }

  @Test
  void impossibleWishes_areAnsweredWithWhatToChange() {
    RotationWish eight = RotationWish.of(RotationGame.DOUBLES, 2, 5, RotationWish.numbered(8));
    assertRefused(eight.withPlayers(List.of()), "no players");
    assertRefused(eight.withPlayers(RotationWish.numbered(41)), "(41) must be 1 to 40");
    assertRefused(eight.withPlayers(RotationWish.numbered(3)), "4 or more for doubles");
    assertRefused(
        RotationWish.of(RotationGame.DOUBLES, 3, 5, RotationWish.numbered(8)),
        "(3) must be at most 2");
    assertRefused(
        RotationWish.of(RotationGame.DOUBLES, 0, 5, RotationWish.numbered(8)), "(0) must be 1");
    assertRefused(
        RotationWish.of(RotationGame.DOUBLES, 2, 61, RotationWish.numbered(8)), "(61) must be");
    Pairing pair = Rotations.pair(1, 2);
    assertRefused(
        eight.keepingApart(pair).keepingTogether(pair), "must not be kept both apart and together");
    assertRefused(eight.keepingTogether(pair).keepingTogether(Rotations.pair(2, 3)), "one partner");
    assertRefused(eight.keepingApart(Rotations.pair(1, 12)), "player 12 of a wish");
    assertRefused(
        RotationWish.of(RotationGame.DOUBLES, 1, 5, RotationWish.numbered(4)).keepingApart(pair),
        "cannot all be kept apart in round 1: there is 1 group and nobody sits out");
  }

  @Test
  void roundsPlayed_thatDoNotFit_areAnsweredWithWhatToChange() {
    List<RotationRound> rounds = Rotations.found(THIRTEEN).rounds();
    assertRefused(THIRTEEN.withPlayed(rounds.subList(1, 3)), "round 2 stands where round 1");
    assertRefused(
        THIRTEEN.withPlayers(RotationWish.numbered(12)).withPlayed(rounds),
        "player 13 of round 1 must be in the list");
    RotationRound first = rounds.get(0);
    RotationRound doubled = new RotationRound(1, first.matches(), first.matches().get(0).players());
    assertRefused(THIRTEEN.withPlayed(List.of(doubled)), "stands twice in round 1");
    assertRefused(
        RotationWish.of(RotationGame.LANES, 3, 8, RotationWish.numbered(13))
            .withPlayed(List.of(first)),
        "has 4 players");
  }

  @Test
  void values_outOfRange_areRefused() {
    assertThatThrownBy(() -> RotationPlayer.of(Rotations.id(1), Double.NaN))
        .hasMessageContaining("NaN");
    assertThatThrownBy(() -> RotationPlayer.of(Rotations.id(1), 0).from(0))
        .hasMessageContaining("start at 1");
    assertThatThrownBy(() -> Rotations.pair(3, 3)).hasMessageContaining("two different players");
    assertThatThrownBy(() -> RotationGame.groupsOf(9)).hasMessageContaining("2 to 8");
    assertThatThrownBy(() -> new SearchEffort(0, 5)).hasMessageContaining("1 or more");
    assertThat(IntStream.rangeClosed(4, 40))
        .allMatch(
            players -> Set.of(players / 4).contains(RotationGame.DOUBLES.courtsFilledBy(players)));
  }

  private static void assertRefused(RotationWish wish, String words) {
    assertThat(Rotations.refused(wish))
        .anySatisfy(sentence -> assertThat(sentence).contains(words))
        .allSatisfy(sentence -> assertThat(sentence).contains("Maybe"));
  }
}
