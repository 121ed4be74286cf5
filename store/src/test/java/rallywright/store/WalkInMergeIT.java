package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.session.CourtEvent;

class WalkInMergeIT {

  private static final Player ROONA = Examples.player("p-roona", "Roona Vell", Standing.ACTIVE);

  @ParameterizedTest
  @EnumSource
  void walkIn_merged_isThePlayerEverywhere(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      store.players().save(ROONA);
      store.players().merge(Examples.WALK_IN.id(), ROONA.id());
      assertThat(store.players().find(Examples.WALK_IN.id())).isEmpty();
      assertThat(store.groups().all().get(0).members())
          .isEqualTo(Set.of(Examples.MARLO.id(), Examples.IVO.id(), ROONA.id()));
      var plan = store.sessions().find(Examples.MONDAY).orElseThrow().plan();
      assertThat(PlanPlayers.named(plan))
          .contains(ROONA.id())
          .doesNotContain(Examples.WALK_IN.id());
      assertThat(PlanPlayers.gamesOf(plan, ROONA.id())).containsExactly(Examples.SECOND);
      assertThat(store.events().of(Examples.MONDAY))
          .contains(new CourtEvent.EffortRated(Examples.stamp("e-11"), ROONA.id(), 4))
          .contains(
              new CourtEvent.YardstickCounted(
                  Examples.stamp("e-08"), Examples.DROPS, ROONA.id(), 14, 20));
    }
  }

  @ParameterizedTest
  @EnumSource
  void eventOfAMergedWalkIn_sentLater_isKeptUnderThePlayer(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      store.players().save(ROONA);
      store.players().merge(Examples.WALK_IN.id(), ROONA.id());
      CourtEvent late =
          new CourtEvent.EffortRated(Examples.stamp("e-50"), Examples.WALK_IN.id(), 6);
      assertThat(store.events().append(List.of(late)).added()).isEqualTo(1);
      assertThat(store.events().append(Examples.oneOfEach()))
          .isEqualTo(new EventLog.Appended(0, List.of()));
      assertThat(store.events().of(Examples.MONDAY))
          .contains(new CourtEvent.EffortRated(Examples.stamp("e-50"), ROONA.id(), 6));
    }
  }

  @ParameterizedTest
  @EnumSource
  void walkIn_whoPlayedAgainstThePlayer_isNotMerged(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      ClubContents before = store.contents();
      assertThatThrownBy(() -> store.players().merge(Examples.WALK_IN.id(), Examples.TESSA.id()))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("two people");
      assertThat(store.contents()).isEqualTo(before);
    }
  }

  @ParameterizedTest
  @EnumSource
  void merge_ofOthersThanAWalkInIntoAPlayer_isRefused(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      PlayerId walkIn = Examples.WALK_IN.id();
      assertThatThrownBy(() -> store.players().merge(Examples.MARLO.id(), Examples.IVO.id()))
          .hasMessageContaining("no walk-in");
      assertThatThrownBy(() -> store.players().merge(walkIn, walkIn))
          .hasMessageContaining("cannot be merged");
      assertThatThrownBy(() -> store.players().merge(walkIn, new PlayerId("p-nobody")))
          .hasMessageContaining("p-nobody");
    }
  }
}
