package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.RotationMatch;
import rallywright.engine.rotation.SavedDay;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** Days of games over real HTTP: made, run, changed, printed, refused. */
class RotationPagesIT {

  private static final List<String> NAMES =
      List.of("Ada", "Bo", "Cy", "Di", "Eli", "Flo", "Gus", "Hal");

  @TempDir private static Path data;
  private static RunningServer server;
  private static CoachBrowser coach;
  private static ClubStore beside;

  @BeforeAll
  static void start() {
    server =
        WebServer.start(new ServerSettings(data, ServerSettings.Mode.CLUB, Reach.thisComputer(0)));
    coach = CoachBrowser.signedIn(server);
    beside = ClubStore.open(StoreAddress.file(data));
    List<Player> players = new ArrayList<>();
    for (String name : NAMES) {
      players.add(
          new Player(
              new PlayerId(name.toLowerCase(Locale.ROOT)),
              name,
              new Level(players.size() < 4 ? 3.0 : 4.5),
              Hand.RIGHT,
              Set.of(),
              "",
              AgeGroup.ADULT,
              Standing.ACTIVE));
    }
    beside.players().saveAll(players);
  }

  @BeforeEach
  void clear() {
    beside.days().all().forEach(day -> beside.days().remove(day.id()));
  }

  @AfterAll
  static void stop() {
    beside.close();
    server.close();
  }

  private static String ticks(int players) {
    StringBuilder ticks = new StringBuilder();
    NAMES
        .subList(0, players)
        .forEach(name -> ticks.append("&who=").append(name.toLowerCase(Locale.ROOT)));
    return ticks.toString();
  }

  private static String fields(String style, int courts) {
    return "name=Games&date=2026-05-02&courts=%d&minutes=84&each=12&style=%s&game=(doubles)"
        .formatted(courts, style);
  }

  private SavedDay made(String fields) {
    var answer = coach.post("/rotations/new", "/rotations/new", fields);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(302);
    return beside.days().all().get(0);
  }

  private PlayDay now() {
    return beside.days().all().get(0).day();
  }

  private java.net.http.HttpResponse<String> post(SavedDay day, String what, String fields) {
    String page = "/rotations/" + day.id();
    return coach.post(page, page + "/" + what, fields);
  }

  @Test
  void newPartners_ofEightForSevenRounds_meetEachOnce_andAreMadeEven() {
    SavedDay day = made(fields("NEW_PARTNERS", 2) + "&even=EVEN" + ticks(8));
    assertThat(day.day().rounds()).hasSize(7);
    String page = coach.get("/rotations/" + day.id()).body();
    assertThat(page).contains("Begin round 1", "8 players, 2 courts, 7 rounds", "Nobody sits out.");
    // Two of 3.0 against two of 4.5 could be avoided in each round.
    assertThat(day.day().measures().worstDifference()).isLessThan(2);
    for (int round = 1; round <= 7; round++) {
      post(day, "next", "");
    }
    assertThat(now().now()).isEqualTo(7);
    assertThat(post(day, "next", "").body()).contains("Round 7 was the last");
    assertThat(coach.get("/rotations").body()).contains("last round");
    assertThat(coach.get("/rotations/" + day.id() + "/wall").body()).contains("Now: round 7");
  }

  @Test
  void oneLeavesAndOneComesLate_theRoundsThatWereBegunStay() {
    SavedDay day = made(fields("NEW_PARTNERS", 1) + ticks(6));
    post(day, "next", "");
    post(day, "next", "");
    List<?> before = now().rounds().subList(0, 2);
    assertThat(post(day, "leave", "leaves=ada").statusCode()).isEqualTo(302);
    assertThat(post(day, "arrive", "arrives=Zoe").statusCode()).isEqualTo(302);
    assertThat(now().rounds().subList(0, 2)).isEqualTo(before);
    PlayerId zoe =
        beside.players().all().stream()
            .filter(each -> each.standing() == Standing.WALK_IN)
            .findFirst()
            .orElseThrow()
            .id();
    assertThat(now().rounds().subList(2, 7))
        .flatExtracting(
            round -> round.matches().stream().flatMap(m -> m.players().stream()).toList())
        .contains(zoe)
        .doesNotContain(new PlayerId("ada"));
    var again = post(day, "arrive", "arrives=Bo");
    assertThat(again.statusCode()).isEqualTo(422);
    assertThat(again.body()).contains("is there already");
  }

  @Test
  void ladder_movesByItsScores_andNamesWhatIsMissing() {
    SavedDay day = made(fields("LADDER", 2) + ticks(8));
    // The strongest start at the top.
    assertThat(day.day().rounds().get(0).matches().get(0).players())
        .containsExactlyInAnyOrder(
            new PlayerId("eli"), new PlayerId("flo"), new PlayerId("gus"), new PlayerId("hal"));
    post(day, "next", "");
    assertThat(coach.get("/rotations/" + day.id()).body()).contains("follows from these scores");
    assertThat(post(day, "next", "").body()).contains("Round 1 still lacks scores");
    post(day, "score", "round=1&a0=11&b0=4&a1=&b1=");
    assertThat(post(day, "next", "").body()).contains("Round 1 still lacks scores");
    RotationMatch top = now().rounds().get(0).matches().get(0);
    assertThat(post(day, "next", "round=1&a0=11&b0=4&a1=3&b1=11").statusCode()).isEqualTo(302);
    assertThat(now().rounds().get(1).matches().get(0).players()).containsAll(top.a());
    assertThat(coach.get("/rotations/" + day.id()).body()).contains("Table", "+7", "+8");
  }

  @Test
  void fixedPairs_areReadFromLines_andPrinted() {
    String pairs = "Ada and Bo\nCy, Di\nEli + Flo\nGus & Hal";
    SavedDay day =
        made(fields("FIXED_PAIRS", 2) + ticks(8) + "&partners=" + CoachBrowser.encoded(pairs));
    assertThat(day.day().rounds()).hasSize(3);
    assertThat(day.day().rounds().get(0).matches().get(0).a())
        .containsExactly(new PlayerId("ada"), new PlayerId("bo"));
    byte[] pdf = coach.getBytes("/rotations/" + day.id() + "/sheet.pdf").body();
    assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    assertThat(coach.get("/rotations/" + day.id() + "/sheet.pdf?paper=a5").body())
        .contains("The paper (a5) must be a4 or letter");
    post(day, "remove", "");
    assertThat(beside.days().all()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NEW_PARTNERS|1|0||There are no players",
        "NEW_PARTNERS|1|3||must be 4 or more",
        "NEW_PARTNERS|3|8||number of courts (3) must be at most 2",
        "NEW_PARTNERS|0|8||The number of courts (0) must be",
        "NEW_PARTNERS|2|8|&apart=Ada and Bo&together=Bo and Ada|both apart and together",
        "NEW_PARTNERS|2|8|&apart=Ada and Nobody|Nobody who is there is called",
        "NEW_PARTNERS|2|8|&apart=Ada|must be two names",
        "NEW_PARTNERS|2|8|&apart=Ada and ada|names one person twice",
        "NEW_PARTNERS|1|4|&apart=Ada and Bo|cannot all be kept apart",
        "NEW_PARTNERS|1|4|&walkIns=Ada|already a player named",
        "LADDER|2|8|&apart=Ada and Bo|only be kept with new partners",
        "FIXED_PAIRS|2|8|&partners=Ada and Bo|stands in no pair",
        "MIXED|1|4|&partners=Ada and Bo%0ACy and Di|couples (2) must be one of",
        "SOMEHOW|1|4||is not one of those offered",
        "NEW_PARTNERS|1|4|&date=soon|must be written as year-month-day",
        "NEW_PARTNERS|1|4|&minutes=5|The minutes (5) must be",
      })
  void wish_thatCannotBe_isRefusedAndNothingIsKept(
      String style, int courts, int players, String more, String words) {
    String fields = fields(style, courts);
    if (more != null && more.startsWith("&date")) {
      fields = fields.replace("date=2026-05-02&", "");
    }
    if (more != null && more.startsWith("&minutes")) {
      fields = fields.replace("minutes=84&", "");
    }
    int before = beside.players().all().size();
    var answer =
        coach.post(
            "/rotations/new",
            "/rotations/new",
            fields + ticks(players) + (more == null ? "" : more.replace(" ", "+")));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body().replace("&#34;", "\"")).contains(words);
    assertThat(beside.days().all()).isEmpty();
    assertThat(beside.players().all()).hasSize(before);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "score|round=1&a0=11&b0=11|must have a winner",
        "score|round=1&a0=11&b0=|The points (empty) must be",
        "score|round=1&a0=111&b0=3|The points (111) must be",
        "score|round=2&a0=11&b0=3|Round 2 has not begun",
        "next|round=1&a0=11&b0=4&a1=11&b1=11|must have a winner",
        "score|round=1&a0=11&b0=4&a7=11&b7=3|not a match 8",
        "leave|leaves=nobody|is not there",
        "leave|leaves=|Who leaves is empty",
        "arrive|arrives=|The name is empty",
      })
  void change_thatCannotBe_isRefusedAndTheDayStays(String what, String fields, String words) {
    SavedDay day = made(fields("NEW_PARTNERS", 2) + ticks(8));
    post(day, "next", "");
    PlayDay before = now();
    var answer = post(day, what, fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains(words);
    assertThat(now()).isEqualTo(before);
    assertThat(coach.get("/rotations/nothing").statusCode()).isEqualTo(404);
  }
}
