package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.Score;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** Weather, load, what tells most and what rose, over real HTTP. */
class PracticePagesIT {

  @TempDir Path data;
  private RunningServer server;
  private CoachBrowser coach;
  private ClubStore beside;
  private Session session;

  @BeforeEach
  void start() {
    server =
        WebServer.start(new ServerSettings(data, ServerSettings.Mode.CLUB, Reach.thisComputer(0)));
    coach = CoachBrowser.signedIn(server);
    beside = ClubStore.open(StoreAddress.file(data));
    StringBuilder fields =
        new StringBuilder(
            "name=Evening&date="
                + LocalDate.now(ZoneId.systemDefault())
                + "&start=18:30&venue=&group=&courts=1"
                + "&coverage=FULL&template=&minutes=60");
    for (String name : List.of("Ada", "Bo")) {
      coach.post("/players/new", "/players/new", "name=" + name + "&level=3.5");
    }
    beside.players().all().forEach(each -> fields.append("&who=").append(each.id()));
    coach.post("/sessions/new", "/sessions/new", fields.toString());
    session = beside.sessions().all().get(0);
  }

  @AfterEach
  void stop() {
    beside.close();
    server.close();
  }

  private String weather() {
    return "/sessions/" + session.id() + "/weather";
  }

  private String player() {
    return "/progress/" + session.plan().present().get(0);
  }

  @Test
  void forecast_isKept_andItsCautionStandsOnThePlanAndOnTheSession() {
    coach.post("/settings", "/settings/units", "units=FEET");
    coach.post(weather(), weather(), "temperature=90&humidity=70&wind=15");
    for (String path : List.of(weather(), "/sessions/" + session.id() + "/plan", session())) {
      // 90 °F and 70 % feel like 105.92 °F (SR 90-23): danger; 15 mph is Beaufort 4.
      assertThat(coach.get(path).body().replace('\u00a0', ' '))
          .contains("feels like 106 °F in the shade", "Heat: danger.", "moderate breeze")
          .contains("80, 90, 105 and 130 °F", "licensed practice");
    }
    assertThat(coach.get(weather()).body())
        .contains("value=\"90\"", "value=\"70\"", "value=\"15\"");
    coach.post(weather(), weather(), "temperature=&humidity=&wind=");
    assertThat(coach.get(session()).body()).doesNotContain("feels like");
  }

  private String session() {
    return "/sessions/" + session.id();
  }

  @ParameterizedTest
  @CsvSource({
    "temperature=999&humidity=&wind=, must be a number from −40 to",
    "temperature=&humidity=101&wind=, The humidity in percent (101) must be",
    "temperature=&humidity=NaN&wind=, The humidity in percent (NaN) must be",
    "temperature=&humidity=&wind=-3, must be a number from 0 to"
  })
  void weatherThatCannotBe_isRefusedAtItsField_andNothingIsKept(String fields, String words) {
    var answer = coach.post(weather(), weather(), fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains(words);
    assertThat(coach.get(session()).body()).doesNotContain("Expected:");
  }

  @Test
  void sessionIndoors_hidesTheWeather() {
    VenueId hall = new VenueId("hall");
    beside.venues().save(new Venue(hall, "Hall", 1, Venue.Setting.INDOOR, "", "", 0));
    coach.post(weather(), weather(), "temperature=90&humidity=70&wind=15");
    beside
        .sessions()
        .save(
            new Session(
                session.id(),
                session.name(),
                session.date(),
                session.start(),
                hall,
                null,
                session.plan(),
                session.state()));
    assertThat(coach.get(session()).body()).doesNotContain("feels like");
    assertThat(coach.get("/sessions/" + session.id() + "/plan").body())
        .doesNotContain("feels like", "weather expected");
    assertThat(coach.get(weather()).body()).contains("indoors").doesNotContain("name=\"wind\"");
  }

  @Test
  void ratedEffort_isTheLoadOfTheWeek_untilThePersonIsErased() {
    rate(7);
    assertThat(coach.get(player()).body()).contains("1 session, 60 min", ">420<");
    assertThat(coach.get("/progress").body()).contains(">420<");
    String name = beside.players().find(session.plan().present().get(0)).orElseThrow().name();
    String erase = "/players/" + session.plan().present().get(0) + "/erase";
    coach.post(erase, erase, "games=KEEP&confirm=" + name);
    assertThat(beside.events().of(session.id()))
        .noneMatch(CourtEvent.EffortRated.class::isInstance);
  }

  @Test
  void playerPage_saysWhatTellsMost_andThePlanGivesItAsAReason() {
    assertThat(coach.get(player()).body()).contains("What to find out", "off the doubt");
    assertThat(coach.get("/sessions/" + session.id() + "/plan").body())
        .contains("tells most for its time");
  }

  @Test
  void drillsPage_beforeAnyScore_saysWhatToDo_andAfterwardsThatItIsTooEarly() {
    assertThat(coach.get("/progress/drills").body()).contains("No scored drill was played yet");
    play();
    assertThat(coach.get("/progress/drills").body())
        .doesNotContain("did more of this rose more: chance")
        .contains("cannot show that the drill was the cause", "Too early to tell")
        .contains("assumed before any score: 84 in 100");
  }

  @Test
  void rise_sinceADay_isShown_andADayThatCannotBe_isRefused() {
    play();
    assertThat(coach.get(player() + "/rise").body()).contains("what rose?");
    var future = coach.get(player() + "/rise?since=2999-01-01");
    assertThat(future.statusCode()).isEqualTo(422);
    assertThat(future.body()).contains("(2999-01-01) must lie before today");
    assertThat(coach.get(player() + "/rise?since=soon").body())
        .contains("The day (soon) must be written as year-month-day");
    assertThat(coach.get("/progress/nobody/rise").statusCode()).isEqualTo(404);
  }

  @Test
  void rise_ofAChosenSize_saysHowManySessionsItTakes_andAnotherSizeIsRefused() {
    play();
    assertThat(coach.get(player() + "/rise").body()).contains("A rise of 10 rallies in 100 would");
    assertThat(coach.get(player() + "/rise?size=LARGE").body())
        .contains("A rise of 20 rallies in 100 would");
    var other = coach.get(player() + "/rise?size=HUGE");
    assertThat(other.statusCode()).isEqualTo(422);
    assertThat(other.body()).contains("The rise (HUGE) is not one of those offered");
  }

  @Test
  void pairs_ofFourPlayers_areSplitThreeWays_andOnePlayerTwiceIsRefused() {
    assertThat(coach.get("/progress/pairs").body()).contains("A doubles game needs four players");
    for (String name : List.of("Cy", "Di")) {
      coach.post("/players/new", "/players/new", "name=" + name + "&level=4.0");
    }
    // Two of level 3.5 and two of 4.0: mixed pairs are even, so the strong pair comes last.
    String games = coach.get("/progress/pairs").body();
    assertThat(games).contains("Ada and Cy", "Ada and Di", "would win about 50 games in 100");
    assertThat(games.indexOf("Cy and Di v Ada and Bo"))
        .isGreaterThan(games.indexOf("Ada and Cy v Bo and Di"))
        .isGreaterThan(games.indexOf("Ada and Di v Bo and Cy"));
    String ada = beside.players().all().get(0).id().value();
    var twice = coach.get("/progress/pairs?one=%s&two=%s&three=x&four=".formatted(ada, ada));
    assertThat(twice.statusCode()).isEqualTo(422);
    assertThat(twice.body()).contains("Ada stands on two places", "Nobody of the list stands here");
  }

  private void rate(int rating) {
    beside
        .events()
        .append(
            List.of(
                new CourtEvent.EffortRated(
                    stamp("00000000-0000-7000-8000-000000000001"),
                    session.plan().present().get(0),
                    rating)));
  }

  private void play() {
    List<CourtEvent> events = new ArrayList<>();
    for (PlannedBlock block : session.plan().blocks()) {
      for (PlannedGame game : block.games()) {
        String id = "00000000-0000-7000-8000-%012d".formatted(events.size() + 100);
        events.add(
            new CourtEvent.FinalScoreGiven(
                stamp(id), game.id(), Score.of(3, 2), CourtEvent.Finish.TIME_CALLED));
      }
    }
    beside.events().append(events);
  }

  private CourtEvent.Stamp stamp(String id) {
    return new CourtEvent.Stamp(new EventId(id), session.id(), 1_000, "desk");
  }
}
