package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.DrillLine;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** Wishes beyond the usual, questions to the planner, mending, shortening, and weeks ahead. */
class PlanWishesIT {

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
    for (String name : List.of("Ada", "Bo", "Cyrus", "Dora", "Edda")) {
      coach.post("/players/new", "/players/new", "name=" + name + "&level=3.5");
    }
  }

  @AfterEach
  void stop() {
    beside.close();
    server.close();
  }

  private Session planned(String more) {
    asked(more);
    return beside.sessions().all().get(0);
  }

  /** The answer to a wish of everybody for a session. */
  private String asked(String more) {
    String who =
        beside.players().all().stream()
            .map(player -> "&who=" + player.id())
            .collect(Collectors.joining());
    return coach
        .post(
            "/sessions/new",
            "/sessions/new",
            "name=Evening&date=2030-05-14&start=18:30&venue=&group=&courts=2&coverage=FULL"
                + (more.contains("template=") ? "" : "&template=")
                + "&minutes=90"
                + who
                + more)
        .body();
  }

  private static List<DrillKey> drills(Session session) {
    return session.plan().blocks().stream().map(PlannedBlock::drill).toList();
  }

  @Test
  void wishes_areKeptWithTheSessionAndShownAgain() {
    Session session =
        planned("&pinned=kitchen-only&forbidden=drive-into-hands&tests=ONE&restEvery=30");
    assertThat(drills(session)).contains(new DrillKey("kitchen-only"));
    assertThat(drills(session)).doesNotContain(new DrillKey("drive-into-hands"));
    assertThat(session.plan().blocks())
        .anyMatch(block -> block.kind() == PlannedBlock.Kind.YARDSTICK);
    String again = coach.get("/sessions/" + session.id() + "/plan/wish").body();
    assertThat(again).contains("More wishes", "value=\"30\"");
    assertThat(coach.get("/sessions/" + session.id() + "/plan").body())
        .doesNotContain("class=\"caution\"");
  }

  @Test
  void equipmentThatIsMissing_keepsItsDrillsOut() {
    Drill needy =
        Catalogue.shipped().drills().stream()
            .filter(DrillLine::isPlayedOnCourt)
            .filter(drill -> !drill.advice().equipment().isEmpty())
            .findFirst()
            .orElseThrow();
    String thing = needy.advice().equipment().get(0);
    Session session = planned("&missing=" + URLEncoder.encode(thing, StandardCharsets.UTF_8));
    assertThat(drills(session)).doesNotContain(needy.key());
    String page = "/sessions/" + session.id() + "/plan";
    assertThat(coach.get(page + "?why=" + needy.key()).body()).contains("which is not at hand");
  }

  @Test
  void nobodyWhoCounts_isAnsweredInASentence() {
    String everybody =
        beside.players().all().stream()
            .map(player -> "&oneWho=%s&oneCounts=NOT_AT_ALL".formatted(player.id()))
            .collect(Collectors.joining());
    assertThat(asked(everybody)).contains("all weights are 0");
  }

  @Test
  void times_ofComingAndLeaving_areKeptAndPlannedFor() {
    Session session =
        planned(
            "&oneWho=ada&oneComes=18:55&oneLeaves=&oneCounts="
                + "&oneWho=Bo&oneComes=&oneLeaves=19:20");
    String page = "/sessions/" + session.id() + "/plan";
    assertThat(coach.get(page).body())
        .contains("Ada comes at 18:55 and first warms up alone", "Bo leaves at 19:20;")
        .contains("not there: Ada", "not there: Bo")
        .doesNotContain("class=\"caution\"");
    assertThat(coach.get(page + "/wish").body())
        .contains("value=\"Ada\"", "value=\"18:55\"", "value=\"Bo\"", "value=\"19:20\"");
    PlayerId bo = session.plan().present().get(1);
    PlannedBlock last = session.plan().blocks().get(session.plan().blocks().size() - 1);
    assertThat(last.away(session.plan().present(), 1)).containsExactly(bo);
  }

  @Test
  void times_thatCannotBe_areAnsweredAtTheRowsAndNothingIsStored() {
    assertThat(asked("&oneWho=Ada&oneComes=19:30&oneLeaves=19:00"))
        .contains("Ada leaves at 19:00, before coming at 19:30.", "value=\"19:30\"");
    assertThat(asked("&oneWho=Zed&oneComes=19:30")).contains("is not among those who");
    assertThat(asked("&oneWho=&oneComes=19:30")).contains("in a row without a name");
    assertThat(asked("&oneWho=Ada&oneComes=noon")).contains("must be a time of day");
    assertThat(asked("&oneWho=Ada&oneComes=22:30")).contains("the session ends at minute 90");
    assertThat(beside.sessions().all()).isEmpty();
  }

  @Test
  void whyNot_isAnsweredOnThePage() {
    Session session = planned("&forbidden=drive-into-hands");
    String page = "/sessions/" + session.id() + "/plan";
    assertThat(coach.get(page + "?why=drive-into-hands").body()).contains("ruled out by the coach");
    PlannedBlock last = session.plan().blocks().get(session.plan().blocks().size() - 1);
    assertThat(coach.get(page + "?why=" + last.drill()).body()).contains("It is in the plan.");
    assertThat(coach.get(page + "?why=nothing").body()).doesNotContain("why-answer");
  }

  @Test
  void mending_restoresARuleAndShortening_fitsWhatIsLeft() {
    Session session = planned("");
    String page = "/sessions/" + session.id() + "/plan";
    BlocksOf warm = new BlocksOf(session, PlannedBlock.Kind.WARM_UP);
    coach.post(page, page + "/change", "change=REMOVE&sure=on&block=" + warm.first());
    coach.post(page, page + "/change", "change=DOWN&block=" + warm.last());
    assertThat(coach.get(page).body()).contains("Mend it");
    coach.post(page, page + "/mend", "");
    assertThat(coach.get(page).body()).doesNotContain("Mend it");
    coach.post(page, page + "/shorten", "left=60");
    Session shorter = beside.sessions().all().get(0);
    assertThat(shorter.plan().minutes()).isEqualTo(60);
    assertThat(coach.get(page).body()).contains("of 60.").doesNotContain("Too long");
  }

  private record BlocksOf(Session session, PlannedBlock.Kind kind) {
    private List<PlannedBlock> all() {
      return session.plan().blocks().stream().filter(block -> block.kind() == kind).toList();
    }

    String first() {
      return all().get(0).id().value();
    }

    String last() {
      return all().get(all().size() - 1).id().value();
    }
  }

  @Test
  void lastSession_isPlayedAgainWithTheSameDrills() {
    Session first = planned("&tests=NONE");
    planned("&template=(last+session)");
    Session second =
        beside.sessions().all().stream()
            .filter(each -> !each.id().equals(first.id()))
            .findFirst()
            .orElseThrow();
    assertThat(drills(second)).isEqualTo(drills(first));
  }

  @Test
  void weeksAhead_areShownForAGroupAndPlannedOneByOne() {
    assertThat(coach.get("/season").body()).contains("for a group. Make one first");
    Set<PlayerId> members =
        beside.players().all().stream().map(Player::id).collect(Collectors.toSet());
    beside.groups().save(new Group(new GroupId("tuesday"), "Tuesday", members));
    String page = coach.get("/season?weeks=6&every=3").body();
    assertThat(page).contains("Week 1:", "Week 6:", "a test is due", "Plan it");
    assertThat(page).contains("/sessions/new?group=");
    assertThat(coach.get("/season?weeks=99&every=3").body()).contains("1 to 52");
  }
}
