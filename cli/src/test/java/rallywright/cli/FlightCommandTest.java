package rallywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FlightCommandTest {

  /** Flights of SciPy's DOP853 at 1e-13; the file's first lines tell how they were made. */
  private static final Path REFERENCE =
      Path.of("../engine/src/test/resources/published/flight/reference.json");

  private static final String BALLS =
      """
      {"cases": [
        {"name": "drop", "mass_kg": 0.0243, "radius_m": 0.0371, "airDensity_kgm3": 1.2,
         "dragCoefficient": 0.33, "liftSlope": 0.195, "wind_mps": [-3, 0, 0],
         "position_m": [-6.7, 0, 0.6], "velocity_mps": [11, 0.5, 5]},
        {"mass_kg": 0.0243, "radius_m": 0.0371, "airDensity_kgm3": 1.2,
         "dragCoefficient": 0.33, "liftSlope": 0.195, "spin_radps": [0, 60, 0],
         "position_m": [-6.7, 0, 0.6], "velocity_mps": [2, 0, 1]}]}
      """;

  @TempDir private Path folder;

  private record Answer(int code, String out, String err) {}

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

  private Answer runOn(String text, String... options) throws Exception {
    Path file = Files.writeString(folder.resolve("balls.json"), text);
    String[] arguments = new String[2 + options.length];
    arguments[0] = "flight";
    arguments[1] = file.toString();
    System.arraycopy(options, 0, arguments, 2, options.length);
    return run(arguments);
  }

  @Test
  void answer_forTheReferenceFile_isThatOfTheIndependentIntegrator() {
    JsonNode reference = new JsonMapper().readTree(REFERENCE.toFile());
    Answer answer = run("flight", REFERENCE.toString(), "--json");
    assertThat(answer.err).isEmpty();
    assertThat(answer.code).isZero();
    JsonNode cases = new JsonMapper().readTree(answer.out).get("cases");
    assertThat(cases).hasSize(reference.get("cases").size());
    for (int i = 0; i < cases.size(); i++) {
      JsonNode found = cases.get(i);
      JsonNode expected = reference.get("cases").get(i);
      assertThat(found.get("name")).isEqualTo(expected.get("name"));
      expected
          .get("expected")
          .forEachEntry(
              (name, value) -> {
                assertThat(found.has(name)).as(name).isTrue();
                if (value.isNull()) {
                  assertThat(found.get(name).isNull()).as(name).isTrue();
                } else {
                  assertThat(found.get(name).asDouble())
                      .as(name)
                      .isCloseTo(value.asDouble(), within(1e-6));
                }
              });
    }
  }

  @Test
  void ball_thatLandsBeforeTheNet_hasNoNumbersThere() throws Exception {
    JsonNode cases = new JsonMapper().readTree(runOn(BALLS, "--json").out).get("cases");
    assertThat(cases.get(0).get("netZ_m").asDouble()).isGreaterThan(0);
    assertThat(cases.get(1).get("name").asString()).isEqualTo("ball 2");
    assertThat(cases.get(1).get("netTime_s").isNull()).isTrue();
    assertThat(cases.get(1).get("netZ_m").isNull()).isTrue();
    assertThat(cases.get(1).get("landX_m").asDouble()).isBetween(-6.7, -4.0);
  }

  @Test
  void table_forPeople_hasARowForEachBall() throws Exception {
    Answer answer = runOn(BALLS);
    assertThat(answer.code).isZero();
    assertThat(answer.out.strip().lines()).hasSize(8);
    assertThat(answer.out).contains("drop", "ball 2", "beyond m", "four balls in five from");
  }

  /** A range around each number; without drag and lift there is nothing that could differ. */
  @Test
  void ball_hasARangeAroundItsNumbers_unlessNothingOfItIsUncertain() throws Exception {
    JsonNode cases = new JsonMapper().readTree(runOn(BALLS, "--json").out).get("cases");
    JsonNode drop = cases.get(0);
    for (String name : List.of("landX_m", "landTime_s", "netZ_m")) {
      JsonNode ends = drop.get("fourInFive").get(name);
      assertThat(ends.get(0).asDouble()).as(name).isLessThan(drop.get(name).asDouble());
      assertThat(ends.get(1).asDouble()).as(name).isGreaterThan(drop.get(name).asDouble());
    }
    assertThat(cases.get(1).get("fourInFive").get("netZ_m").isNull()).isTrue();
    String certain = BALLS.replace("\"liftSlope\"", "\"dragSd\": 0, \"liftSlope\"");
    JsonNode sure = new JsonMapper().readTree(runOn(certain, "--json").out).get("cases").get(0);
    assertThat(sure.get("fourInFive").get("landX_m").get(0)).isEqualTo(sure.get("landX_m"));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/flight/mistakes.csv",
      delimiter = '|',
      quoteCharacter = '`',
      numLinesToSkip = 1)
  void file_withOneMistake_isAnsweredInOneLine(String good, String bad, String words)
      throws Exception {
    assertThat(BALLS).contains(good);
    Answer answer = runOn(BALLS.replaceFirst(Pattern.quote(good), bad), "--json");
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.out).isEmpty();
    assertThat(answer.err).contains(words).contains("Maybe");
    assertThat(answer.err.strip().lines()).hasSize(1);
  }

  /** The sentence of the page; more wind in the face needs more pace. */
  @Test
  void aim_ofADropAgainstTheWind_isSaidInTheWordsOfThePage() {
    Answer words = run("flight", "--aim", "drop-straight", "--wind", "10mph");
    assertThat(words.err).isEmpty();
    assertThat(words.code).isZero();
    assertThat(words.out)
        .containsPattern("Aim .* ft .*, .* short of the kitchen line, .* above the tape")
        .containsPattern("you will be in [1-9] times in 10")
        .contains("we assume, unmeasured", "cannot be attacked");
    JsonNode calm = aimed("drop-straight");
    JsonNode windy = aimed("drop-straight", "--wind", "4.5m/s");
    assertThat(windy.get("speed_mps").asDouble())
        .isGreaterThan(calm.get("speed_mps").asDouble() + 1);
    double chance = windy.get("chance").asDouble();
    assertThat(chance)
        .isBetween(
            windy.get("chanceRange").get(0).asDouble(), windy.get("chanceRange").get(1).asDouble());
    JsonNode pace = windy.get("fourInFive").get("speed_mps");
    assertThat(pace.get(1)).isEqualTo(windy.get("speed_mps"));
    assertThat(pace.get(2).asDouble()).isGreaterThan(pace.get(0).asDouble() + 0.1);
    assertThat(aimed("drop-straight", "--level", "5").get("chance").asDouble())
        .isGreaterThan(calm.get("chance").asDouble() + 0.2);
  }

  /** Twelve landings within a foot: steadier than level 3.5, so the shot comes off more often. */
  private static final String TIGHT =
      """
      5 -1
      5.5 -1.5
      4.5 -1
      5 -0.5
      5.5 -1
      4.5 -1.5
      5 -1.5
      6 -1
      4 -1
      5.5 -0.5
      4.5 -0.5
      5 0
      """;

  @Test
  void aim_withLandingsOfThePlayer_usesTheirScatter() throws Exception {
    String file = Files.writeString(folder.resolve("landings.txt"), TIGHT).toString();
    JsonNode own = aimed("drop-straight", "--landings", file);
    JsonNode assumed = aimed("drop-straight");
    assertThat(own.get("landings").asInt()).isEqualTo(12);
    assertThat(assumed.get("landings").isNull()).isTrue();
    assertThat(own.get("scatter").get(2).asDouble())
        .isLessThan(assumed.get("scatter").get(2).asDouble());
    assertThat(own.get("chance").asDouble()).isGreaterThan(assumed.get("chance").asDouble() + 0.2);
    Answer words = run("flight", "--aim", "drop-straight", "--landings", file);
    assertThat(words.out)
        .contains("Third-shot drop, straight, own landings")
        .contains("From 12 landings, none in the net: two balls in three")
        .doesNotContain("we assume, unmeasured");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"5 1;5 | Line 2 (5) must hold two numbers", "5 1;6 2 | needs 5 landings or more"})
  void aim_withLandingsThatAreWrong_isAnsweredInOneLine(String lines, String words)
      throws Exception {
    String text = lines.replace(';', '\n');
    String file = Files.writeString(folder.resolve("landings.txt"), text).toString();
    Answer answer = run("flight", "--aim", "drive", "--landings", file);
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.err).contains(words).contains("landings.txt").contains("Maybe");
    assertThat(answer.err.strip().lines()).hasSize(1);
  }

  private static JsonNode aimed(String shot, String... options) {
    String[] arguments = new String[4 + options.length];
    arguments[0] = "flight";
    arguments[1] = "--json";
    arguments[2] = "--aim";
    arguments[3] = shot;
    System.arraycopy(options, 0, arguments, 4, options.length);
    Answer answer = run(arguments);
    assertThat(answer.err).isEmpty();
    return new JsonMapper().readTree(answer.out);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "flight | neither",
        "flight --aim moonball | There is no shot",
        "flight --aim drive --wind 10 | must be a number with mph",
        "flight --aim drive --wind 99m/s | at most 12 m/s",
        "flight --aim drive --wind-from 400 | below 360",
        "flight --aim drive --level 9 | from 1.0 to 7.0",
        "flight --aim drive --landings nowhere.txt | cannot be read",
        "flight --aim drive balls.json | not both"
      })
  void aim_wronglyAsked_isAnsweredInOneLine(String line, String words) {
    Answer answer = run(line.split(" ", -1));
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.out).isEmpty();
    assertThat(answer.err).contains(words).contains("Maybe");
    assertThat(answer.err.strip().lines()).hasSize(1);
  }
}
