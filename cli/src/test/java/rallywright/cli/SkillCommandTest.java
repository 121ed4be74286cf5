package rallywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SkillCommandTest {

  /** Check values of an independent program; their pedigree stands beside them. */
  private static final Path CHECKS = Path.of("../engine/src/test/resources/published/skill-checks");

  private static final String CLUB =
      """
      {"skills": ["drop", "dink"], "group": [0, 0], "beta": 0.45, "sigmaL": 0.5, "sigmaG": 0.25,
       "sigmaS": 0.3, "tau": 0.12, "weeks": 3, "levels": [3.0, null, 4.0],
       "learnDrillEffects": true,
       "drills": [{"name": "back v up", "alpha": -0.85, "alphaSd": 0.4, "a": [1, 0], "b": [0, 1]}],
       "yardsticks": [{"name": "drops", "skill": 0, "b": -0.2, "bSd": 0.5}],
       "games": [
         {"week": 0, "drill": 0, "a": [0], "b": [1], "aPoints": 5, "bPoints": 3, "start": [2, 0]},
         {"week": 2, "drill": 0, "format": "side-out", "a": [0], "b": [2], "aPoints": 1,
          "bPoints": 2, "timeCalled": true},
         {"week": 2, "drill": 0, "format": "side-out", "a": [0], "b": [2], "firstServer": "a",
          "aPoints": 1, "bPoints": 5, "rallies": ["aa", "ab", "bb", "bb", "bb", "bb", "bb"]}],
       "yardstickResults": [{"week": 1, "yardstick": 0, "player": 2, "hits": 11, "balls": 20}]}
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

  private Answer runOn(String text) throws Exception {
    Path file = Files.writeString(folder.resolve("club.json"), text);
    return run("skill", file.toString(), "--json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"skill-1-static", "skill-2-weeks", "skill-3-club", "skill-4-formats"})
  void answer_forCheckFile_isThatOfTheIndependentProgram(String name) throws Exception {
    Path file = CHECKS.resolve(name + ".json");
    Answer answer = run("skill", file.toString(), "--json");
    assertThat(answer.err).isEmpty();
    assertThat(answer.code).isZero();
    JsonNode expected = new JsonMapper().readTree(file.toFile());
    JsonNode found = new JsonMapper().readTree(answer.out);
    assertSame(found.get("posterior"), expected.get("posterior"), "posterior");
    if (expected.has("drillEffects")) {
      assertSame(found.get("drillEffects"), expected.get("drillEffects"), "drillEffects");
    }
    assertThat(found.get("logEvidence").asDouble())
        .isCloseTo(expected.get("logEvidenceLaplace").asDouble(), within(1e-6));
  }

  @Test
  void csv_ofEachTable_holdsTheNumbersOfTheAnswer() throws Exception {
    String file = Files.writeString(folder.resolve("club.json"), CLUB).toString();
    JsonNode answer = new JsonMapper().readTree(run("skill", file, "--json").out);
    JsonNode last = answer.get("posterior").get(8);
    assertThat(run("skill", file, "--csv", "skills").out.lines())
        .hasSize(1 + 3 * 3 * 2)
        .startsWith("player,week,skill,mean,sd,mode,modeSd")
        .contains(
            "2,2,dink,%s,%s,%s,%s"
                .formatted(
                    last.get("mean").get(1).asString(),
                    last.get("sd").get(1).asString(),
                    last.get("mode").get(1).asString(),
                    last.get("modeSd").get(1).asString()));
    assertThat(run("skill", file, "--csv", "effects").out.lines())
        .satisfiesExactly(
            head -> assertThat(head).isEqualTo("name,mean,sd,mode,modeSd"),
            drill -> assertThat(drill).startsWith("back v up,-"),
            yardstick -> assertThat(yardstick).startsWith("drops,"));
  }

  private static void assertSame(JsonNode found, JsonNode expected, String path) {
    if (expected.isNumber()) {
      double tolerance = tolerance(path);
      assertThat(found.asDouble()).as(path).isCloseTo(expected.asDouble(), within(tolerance));
    } else if (expected.isString()) {
      assertThat(found).as(path).isEqualTo(expected);
    } else {
      assertThat(found.size()).as(path).isEqualTo(expected.size());
      if (expected.isArray()) {
        for (int i = 0; i < expected.size(); i++) {
          assertSame(found.get(i), expected.get(i), path + "[" + i + "]");
        }
      } else {
        expected.forEachEntry((key, value) -> assertSame(found.get(key), value, path + "." + key));
      }
    }
  }

  private static double tolerance(String path) {
    if (path.contains("mean")) {
      return 0.05;
    }
    return path.contains(".sd") ? 0.02 : path.contains("Sd") ? 1e-5 : 1e-6;
  }

  @Test
  void file_withNullLevelGapsAndTimeCalled_isAnsweredForEveryPlayerAndWeek() throws Exception {
    Answer answer = runOn(CLUB);
    assertThat(answer.err).isEmpty();
    JsonNode found = new JsonMapper().readTree(answer.out);
    assertThat(found.get("posterior")).hasSize(9);
    assertThat(found.get("drillEffects")).hasSize(2);
  }

  @Test
  void target_ofADrill_holdsForItsGames() throws Exception {
    String toThree = CLUB.replace("\"alphaSd\": 0.4,", "\"alphaSd\": 0.4, \"target\": 3,");
    assertThat(runOn(toThree).err)
        .contains("games[2]: The score (1-5) cannot be where a game to 3");
    assertThat(runOn(toThree.replace("\"target\": 3", "\"target\": 5")).err).isEmpty();
  }

  @Test
  void file_withoutLevels_countsThePlayersOfItsGames() throws Exception {
    Answer answer = runOn(CLUB.replace("\"levels\": [3.0, null, 4.0],", ""));
    assertThat(answer.err).isEmpty();
    assertThat(new JsonMapper().readTree(answer.out).get("posterior")).hasSize(9);
  }

  @Test
  void table_forPeople_namesPlayersAndDrills() throws Exception {
    Path file = Files.writeString(folder.resolve("club.json"), CLUB);
    Answer answer = run("skill", file.toString());
    assertThat(answer.code).isZero();
    assertThat(answer.out).contains("player 2  drop", "back v up", "Log evidence");
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/skill/mistakes.csv",
      delimiter = '|',
      quoteCharacter = '`',
      numLinesToSkip = 1)
  void file_withOneMistake_isAnsweredInOneLine(String good, String bad, String words)
      throws Exception {
    assertThat(CLUB).contains(good);
    Answer answer = runOn(CLUB.replaceFirst(Pattern.quote(good), bad));
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.out).isEmpty();
    assertThat(answer.err).contains(words).contains("Maybe");
    assertThat(answer.err.strip().lines()).hasSize(1);
  }

  @Test
  void file_thatDoesNotExist_isAnsweredInOneLine() {
    Answer answer = run("skill", folder.resolve("none.json").toString(), "--json");
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.err).contains("There is no file").contains("Maybe");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "[]", "3", "null"})
  void file_thatIsNoObject_isAnsweredInOneLine(String text) throws Exception {
    Answer answer = runOn(text);
    assertThat(answer.code).isEqualTo(2);
    assertThat(answer.err).contains("must be an object").contains("Maybe");
  }
}
