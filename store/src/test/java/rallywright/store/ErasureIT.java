package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent;

class ErasureIT {

  @ParameterizedTest
  @EnumSource
  void person_erasedWithGamesKept_isANamelessOpponent(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      store.players().erase(Examples.IVO.id(), ErasedGames.KEEP);
      Player left = store.players().find(Examples.IVO.id()).orElseThrow();
      assertThat(left)
          .isEqualTo(
              new Player(
                  Examples.IVO.id(),
                  Erasure.NAMELESS,
                  null,
                  Hand.RIGHT,
                  Set.of(),
                  "",
                  AgeGroup.ADULT,
                  Standing.ERASED));
      assertThat(store.groups().all().get(0).members()).doesNotContain(Examples.IVO.id());
      SessionPlan plan = store.sessions().find(Examples.MONDAY).orElseThrow().plan();
      assertThat(plan.present()).isEqualTo(Examples.plan().present());
      assertThat(plan.blocks().get(0)).isEqualTo(Examples.plan().blocks().get(0));
      assertThat(plan.blocks().get(1).games()).isEqualTo(Examples.plan().blocks().get(1).games());
      assertThat(store.events().of(Examples.MONDAY))
          .hasSize(Examples.oneOfEach().size() - 2)
          .contains(Examples.rally("e-03", Examples.FIRST, Side.A))
          .noneMatch(ErasureIT::isEffortOfIvo)
          .noneMatch(event -> event.toString().contains("from everywhere"));
    }
  }

  @ParameterizedTest
  @EnumSource
  void person_erasedWithGames_isNowhere(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      store.players().erase(Examples.IVO.id(), ErasedGames.REMOVE);
      assertThat(store.players().find(Examples.IVO.id())).isEmpty();
      var plan = store.sessions().find(Examples.MONDAY).orElseThrow().plan();
      assertThat(PlanPlayers.named(plan)).hasSize(3).doesNotContain(Examples.IVO.id());
      assertThat(plan.game(Examples.FIRST)).isEmpty();
      assertThat(plan.game(Examples.SECOND)).isPresent();
      assertThat(store.sessions().templates().values())
          .noneMatch(each -> PlanPlayers.named(each).contains(Examples.IVO.id()));
      assertThat(store.events().of(Examples.MONDAY))
          .extracting(event -> event.stamp().id().value())
          .containsExactly("e-01", "e-07", "e-08", "e-09", "e-11", "e-12", "e-13", "e-15", "e-16");
    }
  }

  @ParameterizedTest
  @EnumSource
  void personNamedInReasons_erased_isNamedInNone_alsoAfterAnOldExport(TestDatabase database) {
    for (ErasedGames games : ErasedGames.values()) {
      try (ClubStore store = ClubStore.open(database.fresh())) {
        Examples.fill(store);
        SessionPlan plan = reasoned(Examples.plan(), "Vani loses about 7 rallies in 10.");
        store.sessions().save(Examples.session().withPlan(plan));
        store.sessions().saveTemplate("Usual", plan);
        ClubContents old = store.contents();
        assertThat(old.toString()).contains("Vani");
        store.players().erase(Examples.IVO.id(), games);
        assertThat(store.contents().toString()).doesNotContain("Vani").contains("begins warm");
        store.take(old);
        assertThat(store.contents().toString()).doesNotContain("Vani").contains("begins warm");
      }
    }
  }

  /** The plan with a reason that names Ivo by the first name he once had. */
  private static SessionPlan reasoned(SessionPlan plan, String reason) {
    PlannedBlock block = plan.blocks().get(1);
    PlannedBlock changed =
        new PlannedBlock(
            block.id(),
            block.kind(),
            block.drill(),
            block.end(),
            block.time(),
            block.games(),
            block.sitting(),
            reason);
    return new SessionPlan(
        plan.minutes(), plan.courts(), plan.present(), List.of(plan.blocks().get(0), changed));
  }

  @ParameterizedTest
  @EnumSource
  void whatWasErased_sentAgainByALatePhone_staysAway(TestDatabase database) {
    for (ErasedGames games : ErasedGames.values()) {
      try (ClubStore store = ClubStore.open(database.fresh())) {
        Examples.fill(store);
        store.players().erase(Examples.IVO.id(), games);
        ClubContents before = store.contents();
        CourtEvent late = new CourtEvent.EffortRated(Examples.stamp("e-40"), Examples.IVO.id(), 9);
        assertThat(store.events().append(Examples.oneOfEach()).added()).isZero();
        assertThat(store.events().append(List.of(late)).added()).isZero();
        assertThat(store.contents()).isEqualTo(before);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void nameInNotesOnOthers_afterErasing_isTakenOut_alsoAfterAnOldExport(TestDatabase database) {
    for (ErasedGames games : ErasedGames.values()) {
      try (ClubStore store = ClubStore.open(database.fresh())) {
        Examples.fill(store);
        store.players().save(renamed(Examples.IVO, "Zeb O'Wraxall"));
        store
            .events()
            .append(
                List.of(
                    Examples.note(
                        "e-50",
                        Optional.of(Examples.TESSA.id()),
                        "With ZEB she waits; Zebra stays."),
                    Examples.note("e-51", Optional.empty(), "Zeb O'Wraxall, later.")));
        ClubContents old = store.contents();
        store.players().erase(Examples.IVO.id(), games);
        assertThat(texts(store))
            .contains("With Former player she waits; Zebra stays.", "Former player, later.");
        store.take(old);
        assertThat(store.contents().toString()).doesNotContain("ZEB ").doesNotContain("Wraxall");
      }
    }
  }

  private static Player renamed(Player player, String name) {
    return new Player(
        player.id(),
        name,
        player.level(),
        player.hand(),
        player.limits(),
        player.notes(),
        player.ageGroup(),
        player.standing());
  }

  private static List<String> texts(ClubStore store) {
    return store.events().all().stream()
        .filter(stored -> stored.event() instanceof CourtEvent.NoteWritten)
        .map(stored -> ((CourtEvent.NoteWritten) stored.event()).text())
        .toList();
  }

  @ParameterizedTest
  @EnumSource
  void noteOnErasedPerson_sentByALatePhone_isNotKept(TestDatabase database) {
    for (ErasedGames games : ErasedGames.values()) {
      try (ClubStore store = ClubStore.open(database.fresh())) {
        Examples.fill(store);
        store.players().erase(Examples.IVO.id(), games);
        CourtEvent late = Examples.note("e-60", Optional.of(Examples.IVO.id()), "late");
        assertThat(store.events().append(List.of(late)).added()).isZero();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void erasedPerson_savedFromAnOldForm_isRefused(TestDatabase database) {
    for (ErasedGames games : ErasedGames.values()) {
      try (ClubStore store = ClubStore.open(database.fresh())) {
        Examples.fill(store);
        store.players().erase(Examples.IVO.id(), games);
        assertThatThrownBy(() -> store.players().save(Examples.IVO))
            .isInstanceOf(StoreProblem.class)
            .hasMessageContaining("erased for good");
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void stranger_cannotBeErased(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      assertThatThrownBy(() -> store.players().erase(new PlayerId("p-nobody"), ErasedGames.KEEP))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("p-nobody");
    }
  }

  /**
   * The bytes of the file and its log hold neither name nor notes, after many rows were written,
   * changed and moved about. PostgreSQL is left out: its files belong to the server.
   */
  @Test
  void bytesOfTheFile_afterErasing_holdNoTrace() throws IOException {
    for (ErasedGames games : ErasedGames.values()) {
      StoreAddress address = TestDatabase.SQLITE.fresh();
      try (ClubStore store = ClubStore.open(address)) {
        Examples.fill(store);
        writeAndChangeMany(store);
        assertThat(tracesIn(address)).isPositive();
        store.players().erase(new PlayerId("p-secret"), games);
        assertThat(tracesIn(address)).isZero();
      }
      assertThat(tracesIn(address)).isZero();
    }
  }

  private static void writeAndChangeMany(ClubStore store) {
    for (int round = 0; round < 3; round++) {
      for (int n = 0; n < 60; n++) {
        String padding = "long notes ".repeat(20 + (7 * n + round) % 50);
        store
            .players()
            .save(
                new Player(
                    new PlayerId("p-" + n),
                    "Player " + n,
                    new Level(3),
                    Hand.RIGHT,
                    Set.of(Limit.EASY_ONLY),
                    padding,
                    AgeGroup.ADULT,
                    Standing.ACTIVE));
        if (n == 30) {
          store
              .players()
              .save(
                  new Player(
                      new PlayerId("p-secret"),
                      "Zebulon Wraxall",
                      new Level(3),
                      Hand.LEFT,
                      Set.of(Limit.NO_LUNGING),
                      padding + "Wraxall-knee" + padding,
                      AgeGroup.ADULT,
                      Standing.ACTIVE));
        }
      }
    }
  }

  private static int tracesIn(StoreAddress address) throws IOException {
    Path file = TestDatabase.fileOf(address);
    int traces = 0;
    try (var files = Files.list(file.getParent())) {
      for (Path each : files.toList()) {
        String bytes = Files.readString(each, StandardCharsets.ISO_8859_1);
        for (int at = bytes.indexOf("Wraxall"); at >= 0; at = bytes.indexOf("Wraxall", at + 1)) {
          traces++;
        }
      }
    }
    return traces;
  }

  private static boolean isEffortOfIvo(CourtEvent event) {
    return event instanceof CourtEvent.EffortRated rated
        && rated.player().equals(Examples.IVO.id());
  }
}
