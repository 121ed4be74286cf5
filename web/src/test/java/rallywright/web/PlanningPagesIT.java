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
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** A plan while it is searched for: seen, ended early, stopped; over real HTTP. */
class PlanningPagesIT {

  private static final String FORM = "/sessions/new";

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
    for (String name : List.of("Ada", "Bo", "Cyrus", "Dora", "Eve", "Finn", "Gus", "Hana")) {
      coach.post("/players/new", "/players/new", "name=" + name + "&level=3.5");
    }
  }

  @AfterEach
  void stop() {
    beside.close();
    server.close();
  }

  /** Asks for a plan of a long session for all, and answers the address of the search. */
  private String search(String name) {
    String fields =
        "name=%s&date=2030-05-14&start=18:30&venue=&group=&courts=2&coverage=FULL&template="
                .formatted(name)
            + "&minutes=150"
            + beside.players().all().stream()
                .map(each -> "&who=" + each.id())
                .collect(Collectors.joining());
    HttpResponse<String> answer =
        coach.postAtOnce(FORM, fields + "&_csrf=" + CoachBrowser.encoded(coach.token(FORM)));
    String next = location(answer);
    assertThat(next).contains("/planning/");
    return next;
  }

  private static String location(HttpResponse<String> answer) {
    return answer.headers().firstValue("Location").orElse("").replaceAll("https?://[^/]+", "");
  }

  private List<String> names() {
    return beside.sessions().all().stream().map(Session::name).toList();
  }

  @Test
  void aSearch_showsHowFarItIs_andTheBestSoFarIsTaken() {
    String first = search("First");
    String second = search("Second");

    HttpResponse<String> page = coach.get(second);
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body())
        .contains("Making the plan", "<progress", "Take the best so far", "Stop, keep nothing");

    assertThat(location(coach.post(FORM, first + "/enough", ""))).isEqualTo(first);
    assertThat(location(coach.post(FORM, second + "/enough", ""))).isEqualTo(second);
    assertThat(location(coach.untilPlanned(second))).endsWith("/plan");
    assertThat(names()).containsExactlyInAnyOrder("First", "Second");
    beside.sessions().all().forEach(each -> assertThat(each.plan().blocks()).isNotEmpty());
  }

  @Test
  void aStoppedSearch_storesNothing_andTheWishesStayInTheForm() {
    search("First");
    String second = search("Second");
    coach.post(FORM, second + "/stop", "");

    String again = location(coach.untilPlanned(second));
    assertThat(again).startsWith(FORM + "?again=");
    assertThat(coach.get(again).body())
        .contains(
            "The search was stopped; nothing was stored", "value=\"Second\"", "value=\"150\"");
    assertThat(names()).doesNotContain("Second");
  }

  @Test
  void aSearchThatIsNotRemembered_isASentence() {
    HttpResponse<String> page = coach.get("/planning/no-such-search");
    assertThat(page.statusCode()).isEqualTo(404);
    assertThat(page.body()).contains("This search for a plan is not remembered any more");
  }
}
