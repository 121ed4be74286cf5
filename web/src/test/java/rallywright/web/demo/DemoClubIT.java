package rallywright.web.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Player;
import rallywright.engine.drill.Skill;
import rallywright.engine.reading.ClubHistory;
import rallywright.engine.reading.ClubReading;
import rallywright.engine.score.FinalScoreCheck;
import rallywright.engine.score.GameState;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionProgress;
import rallywright.engine.simulation.SeededIds;
import rallywright.engine.skill.Estimate;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

class DemoClubIT {

  private static final Clock WEDNESDAY =
      Clock.fixed(Instant.parse("2026-03-11T12:00:00Z"), ZoneOffset.UTC);
  private static final LocalDate TUESDAY = LocalDate.of(2026, 3, 10);

  @TempDir private Path folder;

  @Test
  void emptyStore_isFilledOnce_andLeftAloneTheSecondTime() {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder.resolve("one")))) {
      assertThat(DemoClub.load(store, WEDNESDAY)).isEqualTo(DemoClub.Loading.LOADED);
      List<Session> sessions = store.sessions().all();
      assertThat(store.players().all()).hasSize(12);
      assertThat(store.groups().all()).hasSize(2);
      assertThat(store.venues().all()).hasSize(1);
      // Ten Tuesdays, six Fridays, and the one to come.
      assertThat(sessions).hasSize(17);
      assertThat(sessions)
          .filteredOn(each -> each.state() == Session.State.DONE)
          .hasSize(16)
          .allSatisfy(each -> assertThat(each.plan().present()).hasSizeBetween(6, 12))
          .allSatisfy(each -> assertThat(each.date()).isBeforeOrEqualTo(TUESDAY))
          .anySatisfy(each -> assertThat(each.date()).isEqualTo(TUESDAY));
      int events = store.events().all().size();
      assertThat(DemoClub.load(store, WEDNESDAY)).isEqualTo(DemoClub.Loading.LEFT_ALONE);
      assertThat(store.sessions().all()).hasSize(17);
      assertThat(store.events().all()).hasSize(events);
    }
  }

  @Test
  void sameSeed_givesTheSameSession_withLawfulScores() {
    DemoHistory one = history(3);
    DemoHistory other = history(3);
    DemoHistory.Played played = play(one, 0);
    assertThat(play(other, 0)).isEqualTo(played);
    assertThat(play(history(4), 0).events()).isNotEqualTo(played.events());
    List<GameProgress> games = one.past().get(0).games();
    assertThat(games).isNotEmpty();
    for (GameProgress game : games) {
      GameState.Clock clock =
          game.status() == GameProgress.Status.PLAYED_OUT
              ? GameState.Clock.RUNNING
              : GameState.Clock.TIME_CALLED;
      assertThat(game.status())
          .isIn(GameProgress.Status.PLAYED_OUT, GameProgress.Status.TIME_CALLED);
      assertThat(FinalScoreCheck.of(game.format()).refusalOf(game.score(), clock)).isEmpty();
    }
  }

  @Test
  void intervalsOfTheReading_coverTheTruth_inAboutEightOfTen() {
    DemoHistory history = history(7);
    for (int week = 0; week < 4; week++) {
      if (week > 0) {
        history.nextWeek();
      }
      play(history, week);
    }
    List<Player> players = InventedPeople.with(SeededIds.of(new SplittableRandom(7))).players();
    List<SessionProgress> past = history.past();
    Catalogue catalogue = Catalogue.shipped();
    ClubReading reading =
        ClubReading.of(
            new ClubHistory(players, catalogue.drills(), catalogue.yardsticks(), past, TUESDAY));
    int covered = 0;
    for (Player player : players) {
      for (Skill skill : Skill.values()) {
        Estimate now = reading.skill(player.id(), skill).now();
        double off = Math.abs(history.truth().skills().of(player.id(), skill) - now.mean());
        // 1.2816 standard deviations to each side hold 80 % of a normal distribution.
        covered += off <= 1.2816 * now.sd() ? 1 : 0;
      }
    }
    // Skills of a player rise and fall together, so the share of one club varies widely.
    assertThat(covered / (12.0 * Skill.values().length)).isBetween(0.6, 0.97);
  }

  private static DemoHistory history(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    InventedPeople people = InventedPeople.with(SeededIds.of(random));
    return DemoHistory.begin(people, Catalogue.shipped(), ZoneOffset.UTC, random);
  }

  private static DemoHistory.Played play(DemoHistory history, int week) {
    return history.played(history.people().groups().get(0), TUESDAY.minusWeeks(3).plusWeeks(week));
  }
}
