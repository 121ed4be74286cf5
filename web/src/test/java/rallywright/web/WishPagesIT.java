package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** A planned session asked for otherwise: who, when, how long; late-comers; taking it away. */
class WishPagesIT {

  @TempDir Path data;
  private RunningServer server;
  private CoachBrowser coach;
  private ClubStore beside;

  @BeforeEach
  void start() {
    server =
        WebServer.start(new ServerSettings(data, ServerSettings.Mode.CLUB, Reach.thisComputer(0)));
    coach = CoachBrowser.signedIn(server);
    beside = ClubStore.open(StoreAddress.file(data));
    for (String name : List.of("Ada", "Bo", "Cyrus", "Dora")) {
      coach.post("/players/new", "/players/new", "name=" + name + "&level=3.5");
    }
  }

  @AfterEach
  void stop() {
    beside.close();
    server.close();
  }

  private Session planned() {
    coach.post("/sessions/new", "/sessions/new", wish("Evening", 60, 4));
    return beside.sessions().all().get(0);
  }

  /** The fields of a wish for the first so many players. */
  private String wish(String name, int minutes, int players) {
    return "name=%s&date=2030-05-14&start=18:30&venue=&group=&courts=1&coverage=FULL&template="
            .formatted(name)
        + "&minutes="
        + minutes
        + beside.players().all().stream()
            .limit(players)
            .map(each -> "&who=" + each.id())
            .collect(Collectors.joining());
  }

  private Session again(Session session) {
    return beside.sessions().find(session.id()).orElseThrow();
  }

  private HttpResponse<String> change(Session session, String fields) {
    String page = "/sessions/" + session.id() + "/plan/wish";
    return coach.post(page, page, fields);
  }

  private PlayerId idOf(String name) {
    return beside.players().all().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow()
        .id();
  }

  private void begin(Session session, PlannedGame game) {
    var stamp = new CourtEvent.Stamp(new EventId(beside.freshId()), session.id(), 1_000, "t");
    beside.events().append(List.of(new CourtEvent.TimeCalled(stamp, game.id())));
  }

  private static PlannedBlock withGames(Session session) {
    return session.plan().blocks().stream()
        .filter(each -> !each.games().isEmpty())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void wish_isShownAsItWasAskedFor() {
    Session session = planned();
    String page = coach.get("/sessions/" + session.id() + "/plan/wish").body();
    assertThat(page).contains("value=\"Evening\"", "value=\"60\"", "value=\"2030-05-14\"");
    assertThat(page.split(" checked", -1)).hasSize(1 + 4 + 1);
  }

  @Test
  void wish_withFewerPeopleAndMoreTime_isPlannedAnew() {
    Session session = planned();
    change(session, wish("Long+evening", 90, 3) + "&walkIns=Zed");
    Session changed = again(session);
    assertThat(changed.name()).isEqualTo("Long evening");
    assertThat(changed.plan().minutes()).isEqualTo(90);
    assertThat(changed.plan().present())
        .hasSize(4)
        .contains(idOf("Zed"))
        .doesNotContain(idOf("Dora"));
    assertThat(changed.plan()).isNotEqualTo(session.plan());
    assertThat(beside.sessions().all()).hasSize(1);
  }

  @Test
  void wish_withAnotherNameOnly_keepsThePlanAndItsChangesByHand() {
    Session session = planned();
    String plan = "/sessions/" + session.id() + "/plan";
    coach.post(plan, plan + "/change", "change=MORE&block=" + withGames(session).id());
    Session byHand = again(session);
    change(session, wish("Other+name", 60, 4));
    assertThat(again(session).name()).isEqualTo("Other name");
    assertThat(again(session).plan()).isEqualTo(byHand.plan());
  }

  @Test
  void wish_thatCannotBeMet_orComesTooLate_isRefusedAndNothingIsStored() {
    Session session = planned();
    assertThat(change(session, wish("Evening", 60, 0)).body()).contains("nobody will be there");
    assertThat(change(session, wish("Evening", 9, 4)).body()).contains("from 10 to 480");
    assertThat(again(session)).isEqualTo(session);

    begin(session, withGames(session).games().get(0));
    HttpResponse<String> late = change(session, wish("Evening", 90, 4));
    assertThat(late.statusCode()).isEqualTo(422);
    assertThat(late.body()).contains("was played already");
    assertThat(again(session).plan()).isEqualTo(session.plan());
  }

  @Test
  void lateComer_isAddedByNameWhileTheSessionRuns_andMeansThePlayerOfThatName() {
    coach.post("/sessions/new", "/sessions/new", wish("Evening", 60, 3));
    Session session = beside.sessions().all().get(0);
    begin(session, withGames(session).games().get(0));
    String page = "/sessions/" + session.id();

    coach.post(page, page + "/arrivals", "arrival=+dora+");
    coach.post(page, page + "/arrivals", "arrival=Zed");

    assertThat(again(session).plan().present()).hasSize(5).contains(idOf("Dora"), idOf("Zed"));
    assertThat(beside.players().find(idOf("Zed")).orElseThrow().standing())
        .isEqualTo(Standing.WALK_IN);
    assertThat(coach.get(page).body()).contains("Zed");
    HttpResponse<String> twice = coach.post(page, page + "/arrivals", "arrival=zed");
    assertThat(twice.statusCode()).isEqualTo(422);
    assertThat(twice.body()).contains("is there already");
    assertThat(coach.post(page, page + "/arrivals", "arrival=").body()).contains("name is empty");
    assertThat(again(session).plan().present()).hasSize(5);
  }

  @Test
  void swap_takesTheGamesToCome_andLeavesWhatHasBegun() {
    Session session = planned();
    String page = "/sessions/" + session.id();
    coach.post(page, page + "/arrivals", "arrival=Zed");
    PlannedBlock block = withGames(session);
    PlannedGame first = block.games().get(0);
    PlayerId out = first.a().players().get(0);
    begin(session, first);
    String swap = "change=SWAP&block=" + block.id() + "&one=" + out + "&other=" + idOf("Zed");
    String plan = page + "/plan";

    assertThat(coach.post(plan, plan + "/change", swap + "&turn=1").body())
        .contains("A game of turn 1 has begun");
    coach.post(plan, plan + "/change", swap + "&turn=");

    PlannedBlock after = again(session).plan().block(block.id()).orElseThrow();
    assertThat(after.games()).contains(first);
    assertThat(after.games())
        .filteredOn(game -> game.turn() > 1)
        .noneMatch(game -> game.a().players().contains(out) || game.b().players().contains(out))
        .anyMatch(
            game ->
                game.a().players().contains(idOf("Zed"))
                    || game.b().players().contains(idOf("Zed")));
  }

  @Test
  void plannedSession_canBeRemoved_oneThatBeganStays() {
    Session session = planned();
    String page = "/sessions/" + session.id();
    begin(session, withGames(session).games().get(0));
    coach.post(page, page + "/remove", "");
    assertThat(coach.get(page).statusCode()).isEqualTo(200);
    assertThat(beside.sessions().all()).hasSize(1);

    coach.post("/sessions/new", "/sessions/new", wish("Other", 60, 4));
    Session other =
        beside.sessions().all().stream()
            .filter(each -> each.name().equals("Other"))
            .findFirst()
            .orElseThrow();
    coach.post("/sessions/" + other.id(), "/sessions/" + other.id() + "/remove", "");
    assertThat(beside.sessions().all()).containsExactly(session);
  }

  @Test
  void template_canBeTakenAway() {
    Session session = planned();
    String plan = "/sessions/" + session.id() + "/plan";
    coach.post(plan, plan + "/template", "template=Usual");
    assertThat(coach.get(plan).body()).contains("Templates that are kept");
    coach.post(plan, plan + "/template/remove", "template=Usual");
    assertThat(beside.sessions().templates()).isEmpty();
  }

  @Test
  void firstBlock_movedEarlier_saysSoAtTheBlock() {
    Session session = planned();
    String plan = "/sessions/" + session.id() + "/plan";
    String first = session.plan().blocks().get(0).id().value();
    HttpResponse<String> answer = coach.post(plan, plan + "/change", "change=UP&block=" + first);
    assertThat(answer.body()).contains("This block is the first already.");
    assertThat(again(session).plan()).isEqualTo(session.plan());
  }
}
