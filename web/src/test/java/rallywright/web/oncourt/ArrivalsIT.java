package rallywright.web.oncourt;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** Somebody turns up beside the court: what a phone with a key may do about it, and what not. */
class ArrivalsIT {

  private static final String HERE = "/court/" + SampleClub.SESSION.value();
  private static final String THERE = "/court/" + SampleClub.OTHER.value();

  @TempDir Path data;
  private CourtServer server;
  private CourtClient phone;
  private ClubStore beside;

  @BeforeEach
  void start() {
    server = new CourtServer(data);
    phone = server.phone();
    beside = ClubStore.open(StoreAddress.file(data));
    Session session = beside.sessions().find(SampleClub.SESSION).orElseThrow();
    List<PlannedBlock> drills =
        session.plan().blocks().stream()
            .filter(block -> block.kind() == PlannedBlock.Kind.DRILL)
            .map(ArrivalsIT::inTheCatalogue)
            .toList();
    beside.sessions().save(session.withPlan(session.plan().withBlocks(drills)));
  }

  /** The same games in a drill that the catalogue has. */
  private static PlannedBlock inTheCatalogue(PlannedBlock block) {
    return new PlannedBlock(
        block.id(),
        block.kind(),
        new DrillKey("kitchen-only"),
        block.end(),
        block.time(),
        block.games(),
        block.sitting(),
        block.reason());
  }

  @AfterEach
  void stop() {
    beside.close();
    server.close();
  }

  private SessionPlan plan() {
    return beside.sessions().find(SampleClub.SESSION).orElseThrow().plan();
  }

  private HttpResponse<String> arrive(CourtClient client, String id, String name) {
    return client.postJson(HERE + "/arrivals", "{\"id\":\"" + id + "\",\"name\":\"" + name + "\"}");
  }

  private HttpResponse<String> swap(String game, PlayerId out, PlayerId in) {
    String body = "{\"game\":\"%s\",\"out\":\"%s\",\"in\":\"%s\"}".formatted(game, out, in);
    return phone.postJson(HERE + "/seats", body);
  }

  @Test
  void nameFromAPhone_isAWalkInWhoTakesPart_onceHoweverOftenItIsSent() {
    String id = UUID.randomUUID().toString();
    int before = plan().present().size();
    assertThat(arrive(phone, id, "Zed Novak").statusCode()).isEqualTo(200);
    assertThat(arrive(phone, id, "Zed Novak").statusCode()).isEqualTo(200);
    assertThat(plan().present()).hasSize(before + 1).endsWith(new PlayerId(id));
    assertThat(beside.players().find(new PlayerId(id)).orElseThrow().standing())
        .isEqualTo(Standing.WALK_IN);
    assertThat(phone.state(SampleClub.SESSION.value()).toString())
        .contains("\"Zed\"")
        .doesNotContain("Novak");
  }

  @Test
  void nameFromAPhone_neverReachesSomebodyOfTheList() {
    Player absent =
        new Player(
            new PlayerId("absent"),
            "Wanda Absent",
            null,
            Hand.RIGHT,
            Set.of(),
            "",
            AgeGroup.ADULT,
            Standing.ACTIVE);
    beside.players().save(absent);
    String id = UUID.randomUUID().toString();
    assertThat(arrive(phone, id, "Wanda Absent").statusCode()).isEqualTo(200);
    assertThat(plan().present()).contains(new PlayerId(id)).doesNotContain(absent.id());
    beside.players().merge(new PlayerId(id), absent.id());
    assertThat(plan().present()).contains(absent.id()).doesNotContain(new PlayerId(id));
  }

  @Test
  void namesThatCannotBe_areRefusedInASentence_andNothingChanges() {
    SessionPlan before = plan();
    String id = UUID.randomUUID().toString();
    assertThat(arrive(phone, id, " ").body()).contains("name is empty");
    assertThat(arrive(phone, id, "x".repeat(81)).body()).contains("81 characters", "at most 80");
    assertThat(arrive(phone, id, "a\\u0007b").body()).contains("cannot be shown");
    assertThat(arrive(phone, "7", "Zed").body()).contains("must be a UUID");
    assertThat(phone.postJson(HERE + "/arrivals", "{}").body()).contains("must be a UUID");
    assertThat(plan()).isEqualTo(before);
  }

  @Test
  void session_takesNoMoreThanItCanPlan() {
    int places = 40 - plan().present().size();
    for (int i = 0; i < places; i++) {
      assertThat(arrive(phone, UUID.randomUUID().toString(), "Guest " + i).statusCode())
          .isEqualTo(200);
    }
    HttpResponse<String> full = arrive(phone, UUID.randomUUID().toString(), "One more");
    assertThat(full.statusCode()).isEqualTo(422);
    assertThat(full.body()).contains("40 are there already");
    assertThat(plan().present()).hasSize(40);
  }

  @Test
  void key_ofOneSession_addsNobodyToAnother_andAStrangerNobodyAtAll() {
    String body = "{\"id\":\"" + UUID.randomUUID() + "\",\"name\":\"Zed\"}";
    assertThat(phone.postJson(THERE + "/arrivals", body).statusCode()).isEqualTo(403);
    assertThat(phone.postJson(THERE + "/seats", "{}").statusCode()).isEqualTo(403);
    assertThat(server.stranger().postJson(HERE + "/arrivals", body).statusCode())
        .isBetween(302, 403);
    assertThat(beside.players().all()).extracting(Player::name).doesNotContain("Zed");
  }

  @Test
  void gameThatHasNotBegun_isTakenOverByTheLateComer() {
    String id = UUID.randomUUID().toString();
    arrive(phone, id, "Zed");
    PlannedGame game = lastGame();
    PlayerId out = game.a().players().get(0);
    HttpResponse<String> answer = swap(game.id().value(), out, new PlayerId(id));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    assertThat(lastGame().a().players()).containsExactly(new PlayerId(id));
    HttpResponse<String> again = swap(game.id().value(), out, new PlayerId(id));
    assertThat(again.body()).contains("not in the plan any more");
  }

  @Test
  void gameThatHasBegun_keepsItsPlayers() {
    String id = UUID.randomUUID().toString();
    arrive(phone, id, "Zed");
    PlannedGame game = lastGame();
    String event =
        """
        [{"v":1,"id":"%s","session":"%s","at":1,"by":"t",
          "type":"rally","game":"%s","winner":"A","bonus":"NONE"}]
        """
            .formatted(UUID.randomUUID(), SampleClub.SESSION, game.id());
    assertThat(phone.answers(SampleClub.SESSION.value(), event).toString()).contains("stored");
    HttpResponse<String> answer =
        swap(game.id().value(), game.a().players().get(0), new PlayerId(id));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("has begun");
    assertThat(lastGame()).isEqualTo(game);
  }

  private PlannedGame lastGame() {
    return plan().blocks().stream()
        .flatMap(block -> block.games().stream())
        .reduce((first, second) -> second)
        .orElseThrow();
  }
}
