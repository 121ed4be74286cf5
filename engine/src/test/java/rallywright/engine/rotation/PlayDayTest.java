package rallywright.engine.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import rallywright.engine.club.PlayerId;
import rallywright.engine.score.GameFormat;

class PlayDayTest {

  private static DayWish wish(DayStyle style, int players, int courts, int rounds) {
    return new DayWish(
        style,
        RotationGame.DOUBLES,
        courts,
        rounds,
        RotationWish.numbered(players),
        Set.of(),
        Set.of(),
        1);
  }

  private static PlayDay ready(DayAnswer answer) {
    assertThat(answer).isInstanceOf(DayAnswer.Ready.class);
    return ((DayAnswer.Ready) answer).day();
  }

  private static String refused(DayAnswer answer) {
    assertThat(answer).isInstanceOf(DayAnswer.Refused.class);
    return String.join(" ", ((DayAnswer.Refused) answer).sentences());
  }

  private static PlayDay started(DayWish wish) {
    return ready(PlayDay.start(wish));
  }

  private static PlayDay playedUntil(PlayDay day, int round) {
    PlayDay at = day;
    while (at.now() < round) {
      at = ready(at.next());
    }
    return at;
  }

  /** Side A wins every match of the present round 11-7. */
  private static PlayDay scored(PlayDay day) {
    PlayDay at = day;
    for (int match = 0; match < day.current().orElseThrow().matches().size(); match++) {
      at = ready(at.with(new DayResult(day.now(), match, 11, 7)));
    }
    return at;
  }

  @Example
  void newPartners_oneLeavesAndOneComesLate_playedRoundsStayAndSitOutsStayEven() {
    PlayDay day = playedUntil(started(wish(DayStyle.NEW_PARTNERS, 13, 3, 10)), 4);
    List<RotationRound> before = day.rounds().subList(0, 4);
    PlayDay changed = ready(ready(day.leaving(Rotations.id(5))).arriving(Rotations.id(14), 0));
    assertThat(changed.rounds().subList(0, 4)).isEqualTo(before);
    assertThat(changed.rounds()).hasSize(10);
    Map<PlayerId, Integer> sits = new HashMap<>();
    for (RotationRound round : changed.rounds()) {
      List<PlayerId> named = new ArrayList<>(round.sitting());
      round.matches().forEach(match -> named.addAll(match.players()));
      PlayerId absent = Rotations.id(round.number() > 4 ? 5 : 14);
      assertThat(named).hasSize(13).doesNotHaveDuplicates().doesNotContain(absent);
      round.sitting().forEach(player -> sits.merge(player, 1, Integer::sum));
    }
    List<Integer> throughout =
        IntStream.rangeClosed(1, 13)
            .filter(number -> number != 5)
            .mapToObj(number -> sits.getOrDefault(Rotations.id(number), 0))
            .toList();
    assertThat(Collections.max(throughout) - Collections.min(throughout)).isLessThanOrEqualTo(1);
  }

  @Example
  void ladder_withoutScores_waits_andWithThemMovesOn() {
    PlayDay day = playedUntil(started(wish(DayStyle.LADDER, 8, 2, 3)), 1);
    assertThat(day.following()).isEmpty();
    assertThat(refused(day.next())).contains("Round 1 still lacks scores");
    PlayDay next = ready(scored(day).next());
    assertThat(next.current().orElseThrow().matches().get(0).players())
        .containsExactlyInAnyOrder(
            Rotations.id(1), Rotations.id(4), Rotations.id(5), Rotations.id(8));
    assertThat(refused(next.with(new DayResult(1, 0, 7, 11)))).contains("winners stay as they are");
    assertThat(ready(next.with(new DayResult(1, 0, 11, 3))).result(1, 0).orElseThrow().pointsB())
        .isEqualTo(3);
    PlayDay last = ready(scored(next).next());
    assertThat(last.isOver()).isTrue();
    assertThat(refused(scored(last).next())).contains("was the last");
  }

  @Example
  void ladder_onPaper_hasRoomForTheRoundsThatAreNotKnownYet() {
    PlayDay day = started(wish(DayStyle.LADDER, 9, 2, 6));
    List<RotationRound> printed = day.roundsToPrint();
    assertThat(printed).hasSize(6);
    assertThat(printed.get(0)).isEqualTo(day.rounds().get(0));
    for (RotationRound round : printed.subList(1, 6)) {
      assertThat(round.number()).isEqualTo(printed.indexOf(round) + 1);
      assertThat(round.matches()).hasSize(2);
      assertThat(round.matches()).allSatisfy(match -> assertThat(match.players()).isEmpty());
    }
    PlayDay known = started(wish(DayStyle.NEW_PARTNERS, 9, 2, 6));
    assertThat(known.roundsToPrint()).isEqualTo(known.rounds());
  }

  /**
   * By hand: among equals the server wins every second rally, so a point takes two rallies where
   * only the server scores. Whoever scored serves on and is ahead in the next point, two in three,
   * so the game takes fewer points: less than twice as long, and well over the same.
   */
  @Example
  void timeToCome_whereOnlyTheServerScores_isAlmostTwiceThatOfEveryRally() {
    DayWish lanes =
        new DayWish(
            DayStyle.NEW_PARTNERS,
            RotationGame.LONE_LANES,
            1,
            4,
            RotationWish.numbered(2),
            Set.of(),
            Set.of(),
            1);
    PlayDay day = started(lanes);
    double changes = 4 * RotationTime.CHANGE_SECONDS / 60;
    double usual = day.timeToCome(RotationTime.LANES_PACE).minutesMean() - changes;
    double side =
        day.timeToCome(RotationTime.LANES_PACE, GameFormat.HALF_COURT_GAME).minutesMean() - changes;
    assertThat(side / usual).isBetween(1.5, 2.0);
  }

  @Example
  void ladder_oneLeavesAndOneComes_theNextRoundHasWhoIsThere() {
    PlayDay day = playedUntil(started(wish(DayStyle.LADDER, 9, 2, 6)), 1);
    PlayDay changed = ready(ready(day.leaving(Rotations.id(1))).arriving(Rotations.id(10), 0));
    RotationRound second = ready(scored(changed).next()).current().orElseThrow();
    List<PlayerId> named = new ArrayList<>(second.sitting());
    second.matches().forEach(match -> named.addAll(match.players()));
    assertThat(named).hasSize(9).contains(Rotations.id(10)).doesNotContain(Rotations.id(1));
    assertThat(second.sitting()).doesNotContain(Rotations.id(10));
  }

  @Example
  void fixedPairs_allMeetOnce_andTheTableIsThatOfTheScores() {
    PlayDay day = started(wish(DayStyle.FIXED_PAIRS, 10, 2, 60));
    Set<Set<List<PlayerId>>> meetings = new java.util.HashSet<>();
    for (RotationRound round : day.rounds()) {
      round.matches().forEach(match -> meetings.add(Set.of(match.a(), match.b())));
    }
    assertThat(meetings).hasSize(10);
    assertThat(day.rounds()).hasSize(5);
    PlayDay one = scored(playedUntil(day, 1));
    List<Standings.Line<List<PlayerId>>> table = one.standings();
    assertThat(table).hasSize(5);
    assertThat(table.get(0).won()).isEqualTo(1);
    assertThat(table.get(0).entrant()).hasSize(2);
    assertThat(table.get(4).difference()).isEqualTo(-4);
  }

  @Example
  void fixedPairs_oneLeaves_thePairPlaysNoMore() {
    PlayDay day = playedUntil(started(wish(DayStyle.FIXED_PAIRS, 8, 1, 60)), 2);
    PlayDay changed = ready(day.leaving(Rotations.id(1)));
    for (RotationRound round : changed.rounds().subList(2, changed.rounds().size())) {
      assertThat(round.matches().get(0).players()).doesNotContain(Rotations.id(1), Rotations.id(2));
    }
    assertThat(refused(day.arriving(Rotations.id(9), 0))).contains("nobody can join");
  }

  @Example
  void mixed_eachPlaysWithEachOfTheOthersOnce() {
    PlayDay day = started(wish(DayStyle.MIXED, 8, 2, 60));
    Map<Pairing, Integer> partners = new HashMap<>();
    for (RotationRound round : day.rounds()) {
      for (RotationMatch match : round.matches()) {
        partners.merge(new Pairing(match.a().get(0), match.a().get(1)), 1, Integer::sum);
        partners.merge(new Pairing(match.b().get(0), match.b().get(1)), 1, Integer::sum);
      }
    }
    // Four couples: each of the 4 men plays once with each of the 3 other women.
    assertThat(partners).hasSize(12).allSatisfy((pair, times) -> assertThat(times).isEqualTo(1));
  }

  @Example
  void wish_thatCannotBe_isRefusedWithWhatToChange() {
    assertThat(refused(PlayDay.start(wish(DayStyle.NEW_PARTNERS, 3, 1, 5))))
        .contains("must be 4 or more");
    assertThat(refused(PlayDay.start(wish(DayStyle.LADDER, 9, 3, 5))))
        .contains("must be at most 2");
    assertThat(refused(PlayDay.start(wish(DayStyle.FIXED_PAIRS, 9, 2, 5))))
        .contains("must be even");
    assertThat(refused(PlayDay.start(wish(DayStyle.MIXED, 12, 2, 5))))
        .contains("couples (6) must be one of");
    DayWish ladder =
        new DayWish(
            DayStyle.LADDER,
            RotationGame.DOUBLES,
            1,
            5,
            RotationWish.numbered(4),
            Set.of(Rotations.pair(1, 2)),
            Set.of(),
            1);
    assertThat(refused(PlayDay.start(ladder))).contains("only be kept with new partners");
  }

  @Example
  void change_thatCannotBe_isRefused() {
    PlayDay day = playedUntil(started(wish(DayStyle.NEW_PARTNERS, 5, 1, 4)), 1);
    assertThat(refused(day.arriving(Rotations.id(2), 0))).contains("there already");
    PlayDay four = ready(day.leaving(Rotations.id(2)));
    assertThat(refused(four.leaving(Rotations.id(3)))).contains("Then 3 would be left");
    assertThat(refused(four.leaving(Rotations.id(2)))).contains("is not there");
    assertThat(refused(four.arriving(Rotations.id(2), 0))).contains("cannot come back");
    assertThat(refused(day.with(new DayResult(2, 0, 11, 9)))).contains("Round 2 has not begun");
    assertThat(refused(day.with(new DayResult(1, 1, 11, 9)))).contains("not a match 2");
    assertThatThrownBy(() -> new DayResult(1, 0, 11, 11)).hasMessageContaining("have a winner");
    assertThatThrownBy(() -> new DayResult(1, 0, 111, 9)).hasMessageContaining("0 to 99");
  }

  @Property(tries = 60)
  void fixedPairs_onAnyCourts_waitNoLongerThanOthersByMoreThanARoundOrTwo(
      @ForAll @IntRange(min = 2, max = 12) int pairs,
      @ForAll @IntRange(min = 1, max = 6) int courts) {
    int used = Math.min(courts, pairs / 2);
    PlayDay day = started(wish(DayStyle.FIXED_PAIRS, 2 * pairs, used, 60));
    Map<PlayerId, Integer> played = new HashMap<>();
    for (RotationRound round : day.rounds()) {
      round.matches().forEach(m -> m.players().forEach(p -> played.merge(p, 1, Integer::sum)));
      int most = Collections.max(played.values());
      for (int number = 1; number <= 2 * pairs; number++) {
        assertThat(most - played.getOrDefault(Rotations.id(number), 0)).isLessThanOrEqualTo(2);
      }
    }
    int matches = day.rounds().stream().mapToInt(round -> round.matches().size()).sum();
    assertThat(matches).isEqualTo(Math.min(pairs * (pairs - 1) / 2, matches));
    assertThat(day.rounds().size() == 60 || matches == pairs * (pairs - 1) / 2).isTrue();
  }
}
