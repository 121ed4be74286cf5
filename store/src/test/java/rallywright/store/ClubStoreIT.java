package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;

class ClubStoreIT {

  @ParameterizedTest
  @EnumSource
  void club_closedAndOpenedAgain_isTheSame(TestDatabase database) {
    StoreAddress address = database.fresh();
    try (ClubStore store = ClubStore.open(address)) {
      Examples.fill(store);
    }
    try (ClubStore store = ClubStore.open(address)) {
      assertThat(store.players().all())
          .containsExactlyInAnyOrder(
              Examples.MARLO, Examples.TESSA, Examples.IVO, Examples.WALK_IN);
      assertThat(store.players().find(Examples.IVO.id())).contains(Examples.IVO);
      assertThat(store.groups().all()).containsExactly(Examples.EVENING);
      assertThat(store.venues().all()).containsExactly(Examples.HALL);
      assertThat(store.sessions().all()).containsExactly(Examples.session());
      assertThat(store.sessions().templates())
          .containsOnly(java.util.Map.entry("Soft hour", Examples.plan()));
      assertThat(store.events().of(Examples.MONDAY)).isEqualTo(Examples.oneOfEach());
      assertThat(store.settings().get("units")).contains("metric");
      assertThat(store.customDrills().all()).hasSize(1);
    }
  }

  @ParameterizedTest
  @EnumSource
  void saving_sameIdAgain_replaces(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      var renamed = Examples.player("p-marlo", "Marlo Quint-Vey", Standing.ARCHIVED);
      store.players().save(renamed);
      store.sessions().save(Examples.session().withState(Session.State.DONE));
      store.groups().save(new Group(new GroupId("g-eve"), "Late", java.util.Set.of()));
      assertThat(store.players().find(renamed.id())).contains(renamed);
      assertThat(store.players().all()).hasSize(4);
      assertThat(store.sessions().find(Examples.MONDAY).orElseThrow().state())
          .isEqualTo(Session.State.DONE);
      assertThat(store.groups().find(new GroupId("g-eve")).orElseThrow().members()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void stepOfSeveralChanges_thatFails_changesNothing(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      long before = store.revision();
      assertThatThrownBy(
              () ->
                  store.inOneStep(
                      () -> {
                        store.players().save(Examples.player("p-x", "Xan Dole", Standing.ACTIVE));
                        assertThat(store.players().find(new PlayerId("p-x"))).isPresent();
                        throw new IllegalStateException("the work broke off");
                      }))
          .isInstanceOf(IllegalStateException.class);
      assertThat(store.players().find(new PlayerId("p-x"))).isEmpty();
      assertThat(store.revision()).isEqualTo(before);
    }
  }

  @ParameterizedTest
  @EnumSource
  void session_withStrangers_isRefused(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      assertThatThrownBy(() -> store.sessions().save(Examples.session()))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("not in the club")
          .hasMessageContaining("p-marlo");
      assertThat(store.sessions().all()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void sessions_areListedNewestFirst_andOnlyPlannedOnesGo(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      Session later =
          new Session(
              new SessionId("s-later"),
              "Later",
              Examples.session().date().plusDays(7),
              Examples.session().start(),
              null,
              null,
              new SessionPlan(45, 2, List.of(), List.of()),
              Session.State.PLANNED);
      store.sessions().save(later);
      assertThat(store.sessions().all()).containsExactly(later, Examples.session());
      assertThat(store.sessions().lastBegunBefore(later)).contains(Examples.MONDAY);
      assertThat(store.sessions().lastBegunBefore(Examples.session())).isEmpty();
      assertThatThrownBy(() -> store.sessions().removePlanned(Examples.MONDAY))
          .hasMessageContaining("has begun");
      store.sessions().removePlanned(later.id());
      store.sessions().removeTemplate("Soft hour");
      assertThat(store.sessions().all()).containsExactly(Examples.session());
      assertThat(store.sessions().templates()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void groupOrVenue_takenAway_leavesSessions(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      store.groups().remove(Examples.EVENING.id());
      store.venues().remove(Examples.HALL.id());
      Session session = store.sessions().find(Examples.MONDAY).orElseThrow();
      assertThat(session.group()).isNull();
      assertThat(session.venue()).isNull();
    }
  }

  @ParameterizedTest
  @EnumSource
  void settings_putTwice_keepTheLast(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      store.settings().put("units", "metric");
      store.settings().put("units", "feet");
      assertThat(store.settings().get("units")).contains("feet");
      store.settings().remove("units");
      assertThat(store.settings().get("units")).isEmpty();
    }
  }
}
