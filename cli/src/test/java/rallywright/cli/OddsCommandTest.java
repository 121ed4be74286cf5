package rallywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class OddsCommandTest {

  private static final String PAIRS_11 = "--scoring side-out-pairs --target 11 --win-by 2";

  private record Run(int code, String out, String err) {}

  private static Run run(String flags) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine command = Rallywright.commandLine();
    command.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    List<String> arguments = new ArrayList<>(List.of("odds"));
    Arrays.stream(flags.split(" ", -1)).filter(part -> !part.isEmpty()).forEach(arguments::add);
    int code = command.execute(arguments.toArray(String[]::new));
    return new Run(code, out.toString(), err.toString());
  }

  private static JsonNode json(String flags) {
    Run run = run(flags + " --json");
    assertThat(run.code()).as(run.err()).isZero();
    return JsonMapper.builder().build().readTree(run.out());
  }

  private static double number(JsonNode node, String path) {
    return node.at(path).asDouble(Double.NaN);
  }

  @Test
  void json_ofDoubles_hasThePublishedChance() {
    // wizardofodds.com/ask-the-wizard/421: 0.499999997522.
    JsonNode answer = json(PAIRS_11 + " --serve-a 0.5 --serve-b 0.5");
    assertThat(number(answer, "/winA")).isCloseTo(0.499999997522, within(1e-12));
    assertThat(number(answer, "/rallies/mean")).isCloseTo(34.960669712734, within(1e-9));
    assertThat(number(answer, "/tail")).isBetween(0.0, 1e-12);
    assertThat(answer.at("/rallies/p10").asInt()).isLessThan(answer.at("/rallies/p90").asInt());
  }

  @Test
  void json_fromLiveScores_hasTheComputedChances() {
    // Exact rational arithmetic for this project: 30/43 and 0.364052611563 (table of live scores).
    String even = PAIRS_11 + " --serve-a 0.5 --serve-b 0.5 --score 10-10 --serving a1";
    assertThat(number(json(even), "/winA")).isCloseTo(30.0 / 43, within(1e-12));
    String behind = PAIRS_11 + " --serve-a 0.45 --serve-b 0.40 --score 9-10 --serving a2";
    assertThat(number(json(behind), "/winA")).isCloseTo(0.364052611563, within(1e-11));
  }

  @Test
  void json_ofNamedServers_hasOneDerivativeForEach() {
    JsonNode answer = json(PAIRS_11 + " --serve-a 0.50,0.40 --serve-b 0.45,0.42");
    assertThat(number(answer, "/winA")).isCloseTo(0.563838496745, within(1e-9));
    assertThat(answer.at("/derivatives/serveA").size()).isEqualTo(2);
    assertThat(number(answer, "/derivatives/serveA/0")).isPositive();
    assertThat(number(answer, "/derivatives/serveB/1")).isNegative();
  }

  @Test
  void json_ofTheStartGivenAsAScore_isTheStart() {
    String flags = PAIRS_11 + " --serve-a 0.50,0.40 --serve-b 0.45,0.42";
    assertThat(json(flags + " --score 0-0 --serving a2")).isEqualTo(json(flags));
  }

  @Test
  void json_ofTheLastPointOnServe_hasTheComputedNumbers() {
    JsonNode answer =
        json(
            "--scoring every-rally --last-point server --target 11 --win-by 2"
                + " --serve-a .45 --serve-b .40");
    assertThat(number(answer, "/winA")).isCloseTo(0.589327931312, within(1e-9));
    assertThat(number(answer, "/rallies/sd")).isCloseTo(4.216098302, within(1e-9));
  }

  @Test
  void json_ofOneChance_hasItsScoresDerivativeAndHeadStart() {
    JsonNode answer = json("--scoring every-rally --target 5 --rally 0.6 --score 0-0 --fair");
    assertThat(number(answer, "/winA")).isCloseTo(286497.0 / 390625, within(1e-12));
    assertThat(answer.at("/scores").size()).isEqualTo(10);
    assertThat(number(answer, "/scores/0/chance")).isCloseTo(243.0 / 3125, within(1e-15));
    // d/dp of a race to n: n C(2n-1, n) p^(n-1) q^(n-1), the density of a beta distribution.
    double slope = 5 * 126 * Math.pow(0.6, 4) * Math.pow(0.4, 4);
    assertThat(number(answer, "/derivatives/rally")).isCloseTo(slope, within(1e-12));
    assertThat(answer.at("/headStart/a").asInt()).isZero();
    assertThat(answer.at("/headStart/b").asInt()).isEqualTo(2);
    // A needs 5, B needs 3: 0.6^5 (1 + 5 * 0.4 + 15 * 0.4^2), further than 0.05 from the wish.
    assertThat(number(answer, "/headStart/winA")).isCloseTo(Math.pow(0.6, 5) * 5.4, within(1e-14));
    assertThat(number(answer, "/unequalTargets/winA")).isCloseTo(0.5, within(0.05));
  }

  @Test
  void json_withACap_endsAtTheCap() {
    JsonNode answer =
        json(
            "--scoring side-out --target 11 --win-by 2 --cap 13 --serve-a 0.5 --serve-b 0.4"
                + " --score 12-12 --serving b1");
    assertThat(answer.at("/scores").size()).isEqualTo(2);
    // Next point decides: from B's serve A scores it with (1-b) a / (1 - (1-a)(1-b)).
    assertThat(number(answer, "/winA")).isCloseTo(0.6 * 0.5 / (1 - 0.5 * 0.6), within(1e-14));
  }

  @Test
  void lines_forPeople_saySoInWords() {
    Run run = run(PAIRS_11 + " --serve-a 0.45 --serve-b 0.40 --fair");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("A wins 64.4 games in 100", "Fairest start: 0-2");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --target 5 --rally 0.5                                          | --scoring
          --scoring tennis --target 5 --rally 0.5                         | tennis
          --scoring every-rally --rally 0.5                               | --target
          --scoring every-rally --target 0 --rally 0.5                    | (0)
          --scoring every-rally --target five --rally 0.5                 | five
          --scoring every-rally --target 5.5 --rally 0.5                  | 5.5
          --scoring every-rally --target -5 --rally 0.5                   | (-5)
          --scoring every-rally --target 9999999 --rally 0.5              | 9999999
          --scoring every-rally --target 201 --rally 0.5                  | (201)
          --scoring every-rally --target 5 --win-by 3 --rally 0.5         | (3)
          --scoring every-rally --target 5 --win-by 0 --rally 0.5         | (0)
          --scoring every-rally --target 5 --cap 4 --rally 0.5            | (4)
          --scoring every-rally --target 5 --cap x --rally 0.5            | (x)
          --scoring every-rally --target 5 --rally 55                     | 0.55
          --scoring every-rally --target 5 --rally -0.1                   | -0.1
          --scoring every-rally --target 5 --rally NaN                    | NaN
          --scoring every-rally --target 5 --rally 0,5                    | with a point
          --scoring every-rally --target 5 --rally 0.5 --serve-a 0.5      | --rally and --serve-a
          --scoring every-rally --target 5 --serve-a 0.5                  | --serve-b
          --scoring every-rally --target 5                                | --serve-a
          --scoring side-out --target 5 --rally 0.5                       | --rally
          --scoring side-out --target 5 --serve-a 0.5,0.4 --serve-b 0.4   | side-out-pairs
          --scoring side-out-pairs --target 5 --serve-a 1,2,3 --serve-b 1 | 1,2,3
          --scoring side-out --target 5 --serve-a 0 --serve-b 0           | never ends
          --scoring side-out --target 5 --serve-a 1e-9 --serve-b 1e-9     | rallies on average
          --scoring side-out --target 5 --serve-a .5 --serve-b .5 --score 3-2 | --serving a1
          --scoring side-out --target 5 --serve-a .5 --serve-b .5 --score 3-2 --serving a2 | (a2)
          --scoring side-out --target 5 --serve-a .5 --serve-b .5 --score 3-2 --serving c1 | (c1)
          --scoring side-out --target 5 --serve-a .5 --serve-b .5 --score 5-2 --serving a1 | 5-2
          --scoring side-out --target 5 --serve-a .5 --serve-b .5 --score 5-5 --serving a1 | 5-5
          --scoring side-out --target 5 --serve-a .5 --serve-b .5 --score 3:2 --serving a1 | 3:2
          --scoring side-out --target 5 --serve-a .5 --serve-b .5 --last-point anyone      | anyone
          --scoring every-rally --target 5 --rally 0.5 --last-point me    | (me)
          --scoring every-rally --target 5 --rally 0.5 --last-point server --score 1-1 | --serving
          --scoring every-rally --target 5 --rally 0.5 --fair 1           | --fair
          --scoring every-rally --target 5 --rally 0.5 --fair half        | half
          --scoring every-rally --target 5 --rally 0.5 --colour red       | --colour
          --scoring every-rally --target 5 --rally 0.5 --target 6         | --target
          """)
  void wrongInput_ofAnyKind_isAnsweredInOneLine(String flags, String seen) {
    Run run = run(flags);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().strip().lines()).hasSize(1);
    assertThat(run.err()).contains(seen).contains("Maybe");
  }
}
