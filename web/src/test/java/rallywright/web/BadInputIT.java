package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** Every form answers bad input with a sentence, keeps what was typed and stores nothing. */
class BadInputIT {

  @TempDir static Path data;
  private static RunningServer server;
  private static CoachBrowser browser;
  private static ClubStore beside;

  @BeforeAll
  static void start() {
    server =
        WebServer.start(new ServerSettings(data, ServerSettings.Mode.CLUB, Reach.thisComputer(0)));
    browser = CoachBrowser.signedIn(server);
    beside = ClubStore.open(StoreAddress.file(data));
    beside.players().save(player("ada", "Ada Invented", Standing.ACTIVE));
    beside.players().save(player("bo", "Bo Invented", Standing.ACTIVE));
    beside.players().save(player("wim", "Wim", Standing.WALK_IN));
    beside.groups().save(new Group(new GroupId("g1"), "Tuesday", Set.of()));
    beside.venues().save(new Venue(new VenueId("v1"), "Hall", 2, Venue.Setting.INDOOR, "", "", 0));
    Session tuesday = session("tuesday");
    beside.sessions().save(tuesday);
    beside.sessions().saveTemplate("Usual", tuesday.plan());
  }

  @AfterAll
  static void stop() {
    beside.close();
    server.close();
  }

  @ParameterizedTest(name = "{1} {2}")
  @CsvFileSource(resources = "/bad-input/forms.csv", delimiter = '|')
  void form_filledInWrongly_saysWhatIsAllowedAndStoresNothing(
      String page, String address, String fields, String sentence) {
    List<Object> before = contents();
    String posted = fields.replace("{81}", "x".repeat(81)).replace("{2001}", "y".repeat(2001));

    HttpResponse<String> answer = browser.post(page, address, posted);

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains(sentence.replace("&#34;", "\""));
    assertThat(contents()).isEqualTo(before);
  }

  private static List<Object> contents() {
    return List.of(
        beside.players().all(),
        beside.groups().all(),
        beside.venues().all(),
        beside.sessions().all(),
        beside.sessions().templates(),
        beside.settings().all());
  }

  private static Session session(String id) {
    PlannedBlock warm =
        new PlannedBlock(
            new BlockId("warm"),
            PlannedBlock.Kind.WARM_UP,
            Catalogue.shipped().drills().get(0).key(),
            PlannedBlock.End.BY_CLOCK,
            new BlockTime(5, 0),
            List.of(),
            List.of(),
            "Getting warm.");
    return new Session(
        new SessionId(id),
        "Tuesday",
        LocalDate.of(2030, 5, 14),
        LocalTime.of(18, 30),
        null,
        null,
        new SessionPlan(60, 1, List.of(new PlayerId("ada"), new PlayerId("bo")), List.of(warm)),
        Session.State.PLANNED);
  }

  private static Player player(String id, String name, Standing standing) {
    return new Player(
        new PlayerId(id), name, null, Hand.RIGHT, Set.of(), "", AgeGroup.ADULT, standing);
  }

  @ParameterizedTest
  @ValueSource(strings = {"minutes=10", "minutes=999"})
  void sessionNamedInAnyScript_isLedBackTo_andOneThatIsNotThere_isNotFound(String fields) {
    String id = "вечер";
    beside.sessions().save(session(id));
    String board = "/sessions/" + URLEncoder.encode(id, StandardCharsets.UTF_8) + "/board";
    HttpResponse<String> answer = browser.post("/players/new", board + "/shorten", fields);
    assertThat(answer.headers().firstValue("Location"))
        .hasValueSatisfying(to -> assertThat(to).endsWith(board));
    assertThat(browser.post("/players/new", "/sessions/%D0%B2/board/shorten", fields).statusCode())
        .isEqualTo(404);
  }
}
