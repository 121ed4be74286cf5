package rallywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlanCommandTest {

  /** Invented players. */
  private static final String WISH =
      """
      {"minutes": 90, "courts": 1, "coverage": "full", "confidence": 0.9, "maxHardMinutes": 20,
       "players": [{"name": "Ann", "level": 3.5, "skills": {"drop": -0.4}}, \
      {"name": "Ben", "level": 4.0}]}
      """;

  @TempDir private Path folder;

  private record Answer(int code, String out, String err) {

    JsonNode json() {
      assertThat(err).isEmpty();
      return new JsonMapper().readTree(out);
    }
  }

  private static Answer run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Rallywright.commandLine()
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(arguments);
    return new Answer(code, out.toString(), err.toString());
  }

  private Answer runOn(String text) throws Exception {
    Path file = Files.writeString(folder.resolve("wish.json"), text);
    return run("plan", file.toString(), "--json");
  }

  @Test
  void answer_fitsTheBookedTimeAndStaysBelowItsBound() throws Exception {
    JsonNode found = runOn(WISH).json();
    assertThat(found.get("minutesP90").asDouble()).isLessThanOrEqualTo(90);
    assertThat(found.get("minutesMean").asDouble())
        .isLessThan(found.get("minutesP90").asDouble())
        .isGreaterThan(60);
    assertThat(found.get("benefit").asDouble())
        .isPositive()
        .isLessThanOrEqualTo(found.get("bound").asDouble());
    assertThat(found.get("reasons")).hasSameSizeAs(found.get("blocks"));
    assertThat(found.get("warnings")).isEmpty();
  }

  @Test
  void blocks_nameDrillRolesLanesAndPlayers() throws Exception {
    int order = 1;
    Set<String> kinds = new HashSet<>();
    for (JsonNode block : runOn(WISH).json().get("blocks")) {
      assertThat(block.get("order").asInt()).isEqualTo(order++);
      assertThat(block.get("drill").asString()).isNotBlank();
      assertThat(block.get("minutesMean").asDouble()).isPositive();
      kinds.add(block.get("kind").asString());
      int games = 0;
      for (JsonNode lane : block.get("lanes")) {
        assertThat(lane.get("court").asInt()).isEqualTo(1);
        for (JsonNode game : lane.get("games")) {
          games++;
          assertThat(Set.of(game.at("/a/0").asString(), game.at("/b/0").asString()))
              .containsExactlyInAnyOrder("Ann", "Ben");
        }
      }
      assertThat(block.get("games").asInt()).isEqualTo(games);
      assertThat(block.get("direction").isNull()).isEqualTo(games == 0);
      assertThat(block.get("roles").isNull()).isEqualTo(games == 0);
    }
    assertThat(kinds).contains("warm-up", "drill", "full game");
  }

  @Test
  void sameFile_askedTwice_getsTheSamePlan() throws Exception {
    assertThat(runOn(WISH).out).isEqualTo(runOn(WISH).out);
  }

  @Test
  void weakDrop_bringsMoreMinutesOfDrops() throws Exception {
    String needs = WISH.replace("\"full\"", "\"needs\"");
    String weak = needs.replace("-0.4", "-2.5");
    String strong = needs.replace("-0.4", "2.5");
    assertThat(runOn(weak).json().get("reasons").toString()).contains("Ann", "the drop");
    assertThat(runOn(strong).json().get("reasons").toString()).doesNotContain("on the drop");
  }

  @Test
  void file_withOnlyWhatIsNeeded_isPlannedAsUsual() throws Exception {
    String shortFile =
        """
        {"minutes": 60, "courts": 2, "players": [{"name": "Ann"}, {"name": "Ben", "level": null},
         {"name": "Cyd", "skills": {"pressing-volley": 0.2, "pressing volley": 0.2}}]}
        """;
    JsonNode found = runOn(shortFile).json();
    assertThat(found.get("minutesP90").asDouble()).isLessThanOrEqualTo(60);
    assertThat(found.get("blocks").toString()).contains("\"sitting\":[[\"");
  }

  @Test
  void wishes_beyondTheUsual_areKept() throws Exception {
    String wish =
        """
        {"minutes": 110, "courts": 2, "coverage": "needs",
         "pinned": [{"drill": "kitchen-only", "line": "straight", "rounds": 2}],
         "slots": ["power"], "forbidden": ["drive-into-hands"], "yardsticks": {"every": 4},
         "spare": "three-on-a-lane", "ends": "by-clock", "rests": {"every": 30, "minutes": 4},
         "players": [{"name": "Ann", "limits": ["no lunging"]}, {"name": "Ben", "weight": 2},
          {"name": "Cyd"}, {"name": "Dot"}, {"name": "Eve"}, {"name": "Coach", "fillsIn": true}]}
        """;
    JsonNode found = runOn(wish).json();
    assertThat(found.get("warnings")).isEmpty();
    Set<String> kinds = new HashSet<>();
    Set<String> drills = new HashSet<>();
    for (JsonNode block : found.get("blocks")) {
      kinds.add(block.get("kind").asString());
      drills.add(block.get("drill").asString());
    }
    assertThat(kinds).contains("yardstick", "break", "drill");
    assertThat(drills).contains("Kitchen only").doesNotContain("Drive into hands");
  }

  @Test
  void thirteenPlayers_onThreeCourts_areAllPlanned_oneComesLateOneLeavesEarly() throws Exception {
    StringBuilder players = new StringBuilder();
    for (int i = 0; i < 13; i++) {
      String times = i == 3 ? ", \"from\": 30" : i == 7 ? ", \"until\": 50" : "";
      players.append(i == 0 ? "" : ", ").append("{\"name\": \"P%d\"%s}".formatted(i, times));
    }
    JsonNode found =
        runOn("{\"minutes\": 100, \"courts\": 3, \"players\": [" + players + "]}").json();
    assertThat(found.get("warnings")).isEmpty();
    assertThat(found.get("blocks").toString()).contains("P12");
    assertThat(found.get("notes").toString())
        .contains("P3 comes at minute 30 and first warms up", "P7 leaves at minute 50");
    JsonNode blocks = found.get("blocks");
    assertThat(blocks.get(blocks.size() - 1).at("/away/0/0").asString()).isEqualTo("P7");
  }

  @Test
  void onePlayer_getsServes_andIsToldWhatTheCoachCouldAdd() throws Exception {
    JsonNode found =
        runOn("{\"minutes\": 40, \"courts\": 1, \"players\": [{\"name\": \"Ann\"}]}").json();
    assertThat(found.get("warnings")).isEmpty();
    assertThat(found.get("blocks").toString()).contains("Twenty deep serves");
    assertThat(found.get("notes").toString()).contains("let the coach play or feed");
  }

  @Test
  void moreCourtsThanNeeded_areSaidToStayEmpty() throws Exception {
    JsonNode found = runOn(WISH.replace("\"courts\": 1", "\"courts\": 3")).json();
    assertThat(found.get("notes").toString())
        .contains("2 players can use at most 1 of 3 courts. Maybe give 2 back.");
  }

  @Test
  void booking_tooShortForAnyDrill_isAnsweredInOneLine() throws Exception {
    Answer answer =
        runOn(
            """
            {"minutes": 10, "courts": 1, "confidence": 0.99,
             "players": [{"name": "Ann"}, {"name": "Ben"}, {"name": "Cyd"}]}
            """);
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.err).contains("minutes: 10 minutes are too few", "Maybe book");
    assertThat(answer.err.strip().lines()).hasSize(1);
  }

  @Test
  void table_forPeople_saysTheClockTheDrillsAndTheReasons() throws Exception {
    Path file = Files.writeString(folder.resolve("wish.json"), WISH);
    Answer answer = run("plan", file.toString());
    assertThat(answer.code).isZero();
    assertThat(answer.out)
        .contains("of 90.", "1. ", "Court 1", "Ann (", " v ", "better is possible");
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/plan/mistakes.csv",
      delimiter = '|',
      quoteCharacter = '`',
      numLinesToSkip = 1)
  void file_withOneMistake_isAnsweredInOneLine(String good, String bad, String words)
      throws Exception {
    assertThat(WISH).contains(good);
    Answer answer = runOn(WISH.replaceFirst(Pattern.quote(good), bad));
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.out).isEmpty();
    assertThat(answer.err).contains(words).contains("Maybe");
    assertThat(answer.err.strip().lines()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "[]", "3", "null"})
  void file_thatIsNoObject_isAnsweredInOneLine(String text) throws Exception {
    Answer answer = runOn(text);
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.err).contains("must be an object").contains("Maybe");
  }

  @Test
  void file_thatDoesNotExist_isAnsweredInOneLine() {
    Answer answer = run("plan", folder.resolve("none.json").toString(), "--json");
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.err).contains("There is no file").contains("Maybe");
  }
}
