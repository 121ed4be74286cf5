package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.catalogue.Catalogue;
import rallywright.engine.drill.Drill;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** Planning over real HTTP: people, one press, the plan, changes by hand, paper. */
class PlanPagesIT {

  private static final String PLAN =
      "name=Evening&date=2030-05-14&start=18:30&venue=&group=&courts=1&coverage=FULL&template=";

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

  private Session planned(String more) {
    StringBuilder fields = new StringBuilder(PLAN + more);
    beside.players().all().forEach(each -> fields.append("&who=").append(each.id()));
    coach.post("/sessions/new", "/sessions/new", fields.toString());
    return beside.sessions().all().get(0);
  }

  private Session again(Session session) {
    return beside.sessions().find(session.id()).orElseThrow();
  }

  private HttpResponse<String> change(Session session, String fields) {
    return coach.post(plan(session), plan(session) + "/change", fields);
  }

  private static String plan(Session session) {
    return "/sessions/" + session.id() + "/plan";
  }

  @Test
  void fourPlayersAndAnHour_onePress_givesAPlanThatFitsAndASheetOfOnePage() throws IOException {
    Session session = planned("&minutes=60");

    assertThat(session.plan().present()).hasSize(4);
    assertThat(session.plan().minutes()).isEqualTo(60);
    assertThat(session.plan().blocks().get(0).kind()).isEqualTo(PlannedBlock.Kind.WARM_UP);
    String page = coach.get(plan(session)).body();
    assertThat(page).contains("nine times in ten done within").doesNotContain("That is too long");
    session.plan().blocks().forEach(block -> assertThat(page).contains(escaped(block.reason())));

    for (String paper : List.of("a4", "letter")) {
      byte[] pdf = bytes("/sessions/" + session.id() + "/sheet.pdf?paper=" + paper);
      try (PDDocument document = Loader.loadPDF(pdf)) {
        assertThat(document.getNumberOfPages()).isEqualTo(1);
        String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        assertThat(text).contains(drillNames(session.plan()));
        assertThat(text).contains("Ada", "Bo", "Cyrus", "Dora", "this computer only");
      }
    }
  }

  @Test
  void changesByHand_areKeptAndTheOtherBlocksStay() {
    Session session = planned("&minutes=90");
    PlannedBlock last = lastWithGames(session.plan());
    int games = last.games().size();

    change(session, "change=MORE&block=" + last.id());
    assertThat(again(session).plan().block(last.id()).orElseThrow().games())
        .hasSizeGreaterThan(games)
        .containsAll(last.games());
    change(session, "change=UP&block=" + last.id());
    int place = session.plan().blocks().indexOf(last);
    assertThat(again(session).plan().blocks().get(place - 1).id()).isEqualTo(last.id());
    change(session, "change=REMOVE&block=" + last.id());
    assertThat(again(session).plan().block(last.id())).isEmpty();
    int blocks = again(session).plan().blocks().size();
    change(session, "change=ADD&line=STRAIGHT&drill=" + last.drill());
    assertThat(again(session).plan().blocks()).hasSize(blocks + 1);
  }

  @Test
  void warmUp_goesOnlyAfterTheQuestion() {
    Session session = planned("&minutes=60");
    PlannedBlock warmUp = session.plan().blocks().get(0);

    HttpResponse<String> asked = change(session, "change=REMOVE&block=" + warmUp.id());
    assertThat(asked.statusCode()).isEqualTo(422);
    assertThat(asked.body()).contains("only by an explicit choice");
    assertThat(again(session).plan()).isEqualTo(session.plan());

    change(session, "change=REMOVE&sure=on&block=" + warmUp.id());
    assertThat(again(session).plan().block(warmUp.id())).isEmpty();
  }

  @Test
  void blockBegunOnCourt_staysInThePlan() {
    Session session = planned("&minutes=60");
    PlannedBlock begun = lastWithGames(session.plan());
    beside
        .events()
        .append(
            List.of(
                new CourtEvent.BlockStarted(
                    new CourtEvent.Stamp(new EventId(beside.freshId()), session.id(), 1_000, "t"),
                    begun.id())));

    HttpResponse<String> answer = change(session, "change=REMOVE&block=" + begun.id());
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("was begun already and stays");
    HttpResponse<String> anew =
        coach.post(plan(session), plan(session) + "/anew", "minutes=60&courts=1&coverage=FULL");
    assertThat(anew.body()).contains("Some of this session was played already");
    assertThat(again(session).plan()).isEqualTo(session.plan());
  }

  @Test
  void template_givesTheSameDrillsToWhoeverIsThere() {
    Session first = planned("&minutes=90");
    coach.post(plan(first), plan(first) + "/template", "template=Long+evening");
    assertThat(beside.sessions().templates()).containsKey("Long evening");
    String players = "&who=" + beside.players().all().get(0).id();
    String fields = PLAN.replace("2030", "2031") + "Long+evening&minutes=90&walkIns=Eve" + players;

    coach.post("/sessions/new", "/sessions/new", fields);

    Session second = beside.sessions().all().get(0);
    assertThat(second.date().getYear()).isEqualTo(2031);
    assertThat(second.plan().present()).hasSize(2);
    assertThat(second.plan().blocks().stream().map(PlannedBlock::drill))
        .containsExactlyElementsOf(
            first.plan().blocks().stream().map(PlannedBlock::drill).toList());
  }

  @Test
  void partialUpdate_answersOnlyThePlan() {
    Session session = planned("&minutes=60");
    PlannedBlock last = lastWithGames(session.plan());
    String token = coach.token(plan(session));
    HttpResponse<String> answer =
        coach.send(
            HttpRequest.newBuilder(URI.create(server.address() + plan(session) + "/change"))
                .header("HX-Request", "true")
                .header("X-CSRF-TOKEN", token)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("change=REMOVE&block=" + last.id())));
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body().strip()).startsWith("<div id=\"board\"").doesNotContain("<html");
    assertThat(again(session).plan().block(last.id())).isEmpty();
  }

  @Test
  void settings_giveTheExportAndABackupThatOpens(@TempDir Path elsewhere) throws IOException {
    planned("&minutes=60");
    List<String> names = new ArrayList<>();
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(bytes("/settings/export")))) {
      for (ZipEntry each = zip.getNextEntry(); each != null; each = zip.getNextEntry()) {
        names.add(each.getName());
      }
    }
    assertThat(names).anyMatch(name -> name.startsWith("data/")).anyMatch(n -> n.endsWith(".csv"));
    Files.write(elsewhere.resolve(StoreAddress.FILE_NAME), bytes("/settings/backup"));
    try (ClubStore copy = ClubStore.open(StoreAddress.file(elsewhere))) {
      assertThat(copy.sessions().all()).isEqualTo(beside.sessions().all());
      assertThat(copy.players().all()).isEqualTo(beside.players().all());
    }
  }

  private byte[] bytes(String path) throws IOException {
    HttpResponse<byte[]> answer = coach.getBytes(path);
    assertThat(answer.statusCode()).isEqualTo(200);
    return answer.body();
  }

  private static PlannedBlock lastWithGames(SessionPlan plan) {
    return plan.blocks().stream()
        .filter(each -> each.kind() == PlannedBlock.Kind.DRILL)
        .reduce((first, second) -> second)
        .orElseThrow();
  }

  private static List<String> drillNames(SessionPlan plan) {
    return plan.blocks().stream()
        .flatMap(block -> Catalogue.shipped().drill(block.drill()).stream())
        .map(Drill::name)
        .toList();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
