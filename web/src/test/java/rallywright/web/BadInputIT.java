package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
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
        beside.settings().all());
  }

  private static Player player(String id, String name, Standing standing) {
    return new Player(
        new PlayerId(id), name, null, Hand.RIGHT, Set.of(), "", AgeGroup.ADULT, standing);
  }
}
