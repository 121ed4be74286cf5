package rallywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PointCommandTest {

  @TempDir private Path folder;

  private static String run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine command = Rallywright.commandLine();
    command.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    List<String> all = new ArrayList<>(List.of("point"));
    all.addAll(List.of(arguments));
    assertThat(command.execute(all.toArray(String[]::new))).as(err.toString()).isZero();
    return out.toString();
  }

  private static JsonNode json(String text) {
    return JsonMapper.builder().build().readTree(text);
  }

  /** Equals: the first side to serve of doubles wins almost exactly half its games. */
  @Test
  void equals_winHalfTheirGames_andRalliesSumToOne() {
    JsonNode answer = json(run("--json"));
    assertThat(answer.at("/winA").asDouble()).isCloseTo(0.5, within(1e-3));
    double ended = 0;
    for (JsonNode row : answer.at("/stages")) {
      if (row.at("/server").asString().equals("a")) {
        ended += row.at("/serverWins").asDouble() + row.at("/receiverWins").asDouble();
      }
    }
    assertThat(ended).isCloseTo(1, within(1e-12));
  }

  /** The printed chances, put into the odds command, give the printed game. */
  @Test
  void halfCourtGame_agreesWithTheOddsCommand() {
    JsonNode point = json(run("--play", "half-court", "--skills", "drop=0.6,dink=-0.2", "--json"));
    StringWriter out = new StringWriter();
    CommandLine command = Rallywright.commandLine();
    command.setOut(new PrintWriter(out));
    String odds =
        "odds --scoring side-out --target 11 --win-by 2 --serve-a %s --serve-b %s --json"
            .formatted(point.at("/serveA").asDouble(), point.at("/serveB").asDouble());
    assertThat(command.execute(odds.split(" "))).isZero();
    assertThat(json(out.toString()).at("/winA").asDouble())
        .isCloseTo(point.at("/winA").asDouble(), within(1e-12));
  }

  @Test
  void derivative_isTheDifferenceQuotient() {
    double slope = 0;
    for (JsonNode row : json(run("--skills", "drop=0.3", "--json")).at("/derivatives")) {
      if (row.at("/player").asString().equals("player")
          && row.at("/skill").asString().equals("drop")) {
        slope = row.at("/perLogit").asDouble();
      }
    }
    double more = json(run("--skills", "drop=0.3001", "--json")).at("/winA").asDouble();
    double less = json(run("--skills", "drop=0.2999", "--json")).at("/winA").asDouble();
    assertThat(slope).isPositive().isCloseTo((more - less) / 2e-4, within(1e-7));
  }

  @Test
  void file_withManyLostThirdShots_namesThem() throws IOException {
    StringBuilder endings = new StringBuilder();
    for (int i = 0; i < 80; i++) {
      endings.append(
          "%s{\"server\": \"a\", \"stage\": \"%s\", \"winner\": \"b\"}"
              .formatted(i == 0 ? "" : ",", i < 60 ? "third-shot" : "net-exchange"));
    }
    Path file = folder.resolve("point.json");
    Files.writeString(
        file,
        """
        {"play": "half-court", "a": [{"name": "Ada"}], "b": [{"name": "Bo"}], "endings": [%s]}
        """
            .formatted(endings));
    JsonNode lines = json(run(file.toString(), "--json")).at("/breakdown");
    List<String> named = new ArrayList<>();
    lines.forEach(
        line -> {
          if (line.at("/verdict").asString().equals("breakdown")) {
            named.add(line.at("/lost").asString());
          }
        });
    assertThat(named).hasSize(1);
    assertThat(named.get(0)).contains("third shot");
    assertThat(run(file.toString())).contains("What stands out in the noted endings:");
  }

  @Test
  void csv_hasALineOfNames_andARowForEachSkill() {
    assertThat(run("--csv", "worth").lines())
        .hasSize(1 + 2 * 11)
        .first()
        .isEqualTo("player,skill,perLogit,gamesIn100");
  }
}
