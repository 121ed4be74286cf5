package rallywright.web.oncourt;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.club.Player;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;
import rallywright.web.page.Units;
import tools.jackson.databind.JsonNode;

/** What is kept in memory of a session is never older than the club, whoever changes it. */
class KeptSessionIT {

  private static final String HERE = SampleClub.SESSION.value();

  @TempDir Path data;
  private CourtServer server;
  private CourtClient phone;
  private ClubStore beside;
  private int made;

  @BeforeEach
  void start() {
    server = new CourtServer(data);
    phone = server.phone();
    beside = ClubStore.open(StoreAddress.file(data));
    score();
    assertThat(events()).isEqualTo(1);
  }

  @AfterEach
  void stop() {
    beside.close();
    server.close();
  }

  @Test
  void entries_ofThisProgram_areSeenAtOnce() {
    for (int rally = 2; rally <= 4; rally++) {
      score();
      assertThat(events()).isEqualTo(rally);
      assertThat(points()).isEqualTo(rally);
    }
  }

  @Test
  void entries_ofAnotherProgram_areSeenAtOnce_amongOwnOnes() {
    addBeside();
    assertThat(events()).isEqualTo(2);
    score();
    addBeside();
    score();
    assertThat(events()).isEqualTo(5);
    assertThat(points()).isEqualTo(3);
  }

  @Test
  void everythingElse_changedByWhomever_isSeenAtOnce() {
    Player first = beside.players().all().get(0);
    beside.players().save(renamed(first));
    assertThat(state().get("plan").toString()).contains("Wanda");
    score();
    Session session = beside.sessions().find(SampleClub.SESSION).orElseThrow();
    List<PlannedBlock> fewer = session.plan().blocks().subList(0, 3);
    beside.sessions().save(session.withPlan(session.plan().withBlocks(fewer)));
    assertThat(state().get("plan").get("blocks").size()).isEqualTo(3);
    CourtClient coach = server.coach();
    coach.postForm("/sessions/" + HERE + "/board", "/sessions/" + HERE + "/board/end", Map.of());
    assertThat(state().get("ended").booleanValue()).isTrue();
    assertThat(state().get("state").stringValue()).isEqualTo("DONE");
  }

  @Test
  void markOfThePlan_staysWhileEntriesCome_andChangesWithNamesAndUnits() {
    String first = mark();
    score();
    assertThat(mark()).isEqualTo(first);
    beside.players().save(renamed(beside.players().all().get(0)));
    String renamed = mark();
    assertThat(renamed).isNotEqualTo(first);
    beside.settings().put("units", Units.METRIC.name());
    assertThat(mark()).isNotEqualTo(renamed);
  }

  @Test
  void games_areSentOnlyToWhoAsks() {
    JsonNode usual = CourtClient.read(phone.get("/court/" + HERE + "/state"));
    assertThat(usual.has("games")).isFalse();
    assertThat(state().get("games").size()).isGreaterThan(1);
  }

  private String mark() {
    return state().get("planMark").stringValue();
  }

  private static Player renamed(Player player) {
    return new Player(
        player.id(),
        "Wanda Other",
        player.level(),
        player.hand(),
        player.limits(),
        player.notes(),
        player.ageGroup(),
        player.standing());
  }

  private void addBeside() {
    EventId id = new EventId("01890000-0000-7000-9000-%012d".formatted(++made));
    CourtEvent.Stamp stamp = new CourtEvent.Stamp(id, SampleClub.SESSION, 1_772_557_200_000L, "");
    beside.events().append(List.of(new CourtEvent.BlockEnded(stamp, new BlockId("b1"))));
  }

  private void score() {
    String rally =
        """
        [{"v":1,"type":"rally","id":"01890000-0000-7000-8000-%012d","session":"%s","at":1,\
        "by":"t","game":"b2-t1-l1","winner":"A","bonus":"NONE"}]"""
            .formatted(++made, HERE);
    assertThat(phone.answers(HERE, rally).get(0).get("outcome").stringValue()).isEqualTo("stored");
  }

  private JsonNode state() {
    return phone.state(HERE);
  }

  private int events() {
    return state().get("events").size();
  }

  private int points() {
    for (JsonNode game : state().get("games")) {
      if (game.get("id").stringValue().equals("b2-t1-l1")) {
        return game.get("rallies").intValue();
      }
    }
    return -1;
  }
}
