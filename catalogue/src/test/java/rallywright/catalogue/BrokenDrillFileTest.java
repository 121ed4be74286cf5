package rallywright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.drill.Drill;

/** One change to a good file at a time, and the whole sentence that answers it. */
class BrokenDrillFileTest {

  private static final String GOOD = shipped("drop-and-follow.yaml");
  private static final String EVEN = shipped("kitchen-only.yaml");
  private static final String YARDSTICK = shipped("twenty-drops.yaml");

  static Stream<Arguments> brokenDrills() {
    return Stream.of(WORDS, SIDES, GAMES).flatMap(Stream::of);
  }

  private static final Arguments[] WORDS = {
    arguments("key: drop-and-follow", "key: Drop and follow", "1:6", "lower-case words joined by"),
    arguments("name: \"Drop and follow\"", "name: \"\"", "1:1", "The name must not be empty."),
    arguments(
        "name: \"Drop and follow\"",
        "name: \"A name that is far too long for a column of the sheet\"",
        "1:1",
        "The name (53 characters) must not be longer than 40."),
    arguments("name: \"Drop and follow\"\n", "", "1:1", "\"drill\" has no \"name\""),
    arguments("name: \"Drop", "nmae: \"Drop", "2:1", "\"nmae\" is not known in \"drill\""),
    arguments("name: \"Drop", "nmae: \"Drop", "2:1", "Maybe \"name\" was meant."),
    arguments(
        "key: drop-and-follow",
        "key: drop-and-follow\nkey: again",
        "2:1",
        "\"key\" stands here a second time"),
    arguments("kind: scored-game\n", "", "1:1", "\"drill\" has no \"kind\""),
    arguments(
        "kind: scored-game",
        "kind: scored game",
        "3:7",
        "\"kind\" is \"scored game\", but must be one of: general-warm-up"),
    arguments("kind: scored-game", "kind: full-game", "1:1", "A full game starts with a serve"),
    arguments("kind: scored-game", "kind: cooperative", "33:1", "\"game\" is not known"),
    arguments(
        "progression: baseline", "progression: basline", "4:14", "Maybe \"baseline\" was meant."),
    arguments("progression: baseline", "progression: warm-up", "1:1", "cannot stand at"),
    arguments("intensity: steady", "intensity: 7", "7:12", "must be one of: easy, steady, hard."),
    arguments("intensity: steady", "intensity: [steady]", "7:12", "must be a text, but a list"),
    arguments("key: drop", "\tkey: drop", "1:1", "This is not YAML"),
    arguments("equipment: []", "equipment: none", "41:12", "must be a list, but a single value"),
    arguments("safety:\n", "safety: []\nextra:\n", "50:1", "\"extra\" is not known"),
  };

  private static final Arguments[] SIDES = {
    arguments("players: 2", "players: 3", "9:10", "\"players\" is 3, but the sides place 2."),
    arguments("players: 2", "players: two", "9:10", "must be a whole number such as 5"),
    arguments("[straight, cross-even, cross-odd]", "[]", "15:3", "needs a direction"),
    arguments(
        "[straight, cross-even",
        "[straight, crosseven",
        "10:24",
        "Maybe \"cross-even\" was meant."),
    arguments("by: second-role", "by: somebody", "12:7", "must be one of: first-role"),
    arguments("  - role: back", "  - role: up", "15:3", "The roles (up and up) must differ"),
    arguments("  - role: back", "  - role: even", "15:3", "The roles (even and up) must differ"),
    arguments("from-net: 22.5 ft}", "from-net: 22.5}", "17:43", "must be a length with its unit"),
    arguments("from-net: 22.5 ft}", "from-net: 31 ft}", "17:13", "must lie from 0 to 30 ft."),
    arguments("from-net: 22.5 ft}", "from-net: -1 ft}", "17:43", "must be a length with its unit"),
    arguments("{from-centre: 5 ft, from", "{from", "17:13", "\"stands\" has no \"from-centre\""),
    arguments(
        "in-bounds: whole-half", "in-bounds: kitchn", "19:16", "Maybe \"kitchen\" was meant."),
    arguments(
        "in-bounds: whole-half",
        "in-bounds: {from-net: 12 ft, to-net: 23 ft}",
        "19:16",
        "must lie inside the lines"),
    arguments(
        "in-bounds: whole-half",
        "in-bounds: {from-net: 12 ft, to-net: 12 ft}",
        "19:16",
        "must not lie on one line"),
    arguments(
        "in-bounds: whole-half",
        "in-bounds: [{from-centre: 0 ft, from-net: 0 ft}, {from-centre: 9 ft, from-net: 9 ft}]",
        "19:16",
        "needs 3 corners or more, but 2 were given"),
    arguments("strokes: [drop, reset", "strokes: [drop, drop", "20:21", "\"drop\" is named twice"),
    arguments("strokes: [drop, reset, dink, drive, counter]", "strokes: []", "15:5", "one stroke"),
    arguments("advance: may-come-forward", "advance: yes", "21:14", "must be one of: stays"),
    arguments("{drop: 0.7, reset", "{drop: 0.6, reset", "22:14", "The weights sum to 0.9000 but"),
    arguments("{drop: 0.7, reset", "{drop: 70, reset", "22:14", "Maybe it was meant in percent"),
    arguments("{drop: 0.7, reset", "{drop: 0,7, reset", "22:23", "\"7\" is not known"),
    arguments("{drop: 0.7, reset", "{drop: NaN, reset", "22:21", "must be a number such as 0.4"),
    arguments("{drop: 0.7, reset", "{drops: 0.7, reset", "22:15", "Maybe \"drop\" was meant."),
    arguments("demands: [lunging]", "demands: [flying]", "23:15", "must be one of: overheads"),
  };

  private static final Arguments[] GAMES = {
    arguments("target: 5", "target: 0", "33:38", "The target (0) must lie from 1 to 200."),
    arguments("target: 5", "target: five", "33:38", "must be a whole number such as 5"),
    arguments("win-by: 1", "win-by: 3", "33:49", "\"win-by\" is 3, but must be 1 or 2."),
    arguments("scoring: every-rally", "scoring: rally", "33:17", "must be one of: every-rally"),
    arguments(
        "scoring: every-rally", "scoring: only-the-server", "35:12", "must count every rally"),
    arguments("serving: feed", "serving: fixed-lane", "35:12", "A serve needs a place"),
    arguments("{logit: -0.85", "{logit: -85", "35:12", "must lie from -3 to 3 in log odds."),
    arguments("sd: 0.4, source", "sd: 0, source", "35:12", "needs an advantage with a spread"),
    arguments("source: \"assumption of this project\"}", "source: \"\"}", "35:12", "A source"),
    arguments("in-play: {mean: 9", "in-play: {mean: 900", "37:12", "from 0.5 to 120 seconds."),
    arguments("in-play: {mean: 9, sd: 6}", "in-play: 9", "37:12", "must be a block of named"),
    arguments("between: {mean: 10, sd: 4}", "between: {mean: 10}", "38:12", "has no \"sd\""),
  };

  @ParameterizedTest
  @MethodSource("brokenDrills")
  void drill_withOneThingWrong_isAnsweredInASentenceAtItsPlace(
      String good, String broken, String place, String sentence) {
    assertThat(GOOD).contains(good);
    DrillFileProblem problem = problem(GOOD.replaceFirst(quoted(good), quotedBy(broken)));
    assertThat(problem).hasMessageContaining(sentence);
    assertThat(problem.line() + ":" + problem.column()).isEqualTo(place);
    assertThat(problem).hasMessageStartingWith("own.yaml, line " + problem.line() + ", column ");
    assertThat(problem.sentence()).containsPattern("(Maybe|must)").endsWith(".");
  }

  @Test
  void evenDrill_withAnAdvantage_isRefused() {
    String broken = EVEN + "advantage: {logit: 0.2, sd: 0.4, source: \"a feeling\"}\n";
    assertThat(problem(broken)).hasMessageContaining("must be 0 in an even drill");
  }

  @Test
  void evenDrill_givenTwiceWithADifference_isRefused() {
    int from = EVEN.indexOf("  - role: even");
    int to = EVEN.indexOf("\ngame:");
    String side = EVEN.substring(from, to);
    String broken =
        EVEN.substring(0, to) + side.replace("in-bounds: kitchen", "in-bounds: whole-half");
    assertThat(problem(broken + EVEN.substring(to)))
        .hasMessageContaining("Both sides of an even drill must be the same");
  }

  @Test
  void drill_withOneRoleAlone_isRefused() {
    String broken = EVEN.replace("role: even", "role: up");
    assertThat(problem(broken)).hasMessageContaining("must be one even side or two roles");
  }

  @Test
  void roundThePost_inAStraightDrill_isRefused() {
    String broken = EVEN.replace("[straight, cross-even, cross-odd]", "[straight]");
    assertThat(problem(broken)).hasMessageContaining("can only count where the drill is played");
  }

  @Test
  void file_thatIsNoDrillAtAll_isRefused() {
    assertThat(problem("")).hasMessageContaining("The file is empty");
    assertThat(problem("# only a remark\n")).hasMessageContaining("The file is empty");
    assertThat(problem("- a\n- b\n")).hasMessageContaining("must be a block of named entries");
    assertThat(problem("just words")).hasMessageContaining("must be a block of named entries");
    assertThat(problem("? [a, b]\n: c\n")).hasMessageContaining("must be a word");
    assertThat(problem("a: \u0000")).hasMessageContaining("a character that no text has");
    assertThat(problem("a: 1\n---\nb: 2\n")).hasMessageContaining("This is not YAML");
    assertThat(problem("a: [1, 2\n")).hasMessageContaining("This is not YAML");
    assertThat(problem("a: *nothing\n")).hasMessageContaining("This is not YAML");
    assertThat(problem("x".repeat(50_001))).hasMessageContaining("at most 50000 are allowed");
    assertThat(problem("kind: &a [*a]\n")).hasMessageContaining("must be a text");
  }

  @Test
  void lengths_inMetresOrFeetAndInches_areTheSameLength() {
    String metres = GOOD.replace("from-net: 22.5 ft", "from-net: 6.858 m");
    String inches = GOOD.replace("from-net: 22.5 ft", "from-net: 22 ft 6 in");
    Drill drill = Catalogue.read("own.yaml", GOOD);
    for (String text : new String[] {metres, inches}) {
      double read =
          Catalogue.read("own.yaml", text)
              .layout()
              .orElseThrow()
              .sides()
              .a()
              .stands()
              .get(0)
              .straight()
              .fromNet()
              .metres();
      assertThat(read).isCloseTo(6.858, org.assertj.core.api.Assertions.within(1e-9));
    }
    assertThat(Catalogue.shipped().with(drill).drills())
        .hasSameSizeAs(Catalogue.shipped().drills());
  }

  @Test
  void yardstick_withOneThingWrong_isAnsweredAtItsPlace() {
    assertThat(yardstickProblem("balls: 20", "balls: 4"))
        .hasMessageContaining("The number of balls (4) must lie from 5 to 100.");
    assertThat(yardstickProblem("skill: drop", "skill: drops"))
        .hasMessageContaining("Maybe \"drop\" was meant.");
    assertThat(yardstickProblem("sd: 0.5", "sd: 0"))
        .hasMessageContaining("with a spread above 0 up to 2");
    assertThat(yardstickProblem("target: kitchen", "target: garden"))
        .hasMessageContaining("must be one of: kitchen");
  }

  private static DrillFileProblem yardstickProblem(String good, String broken) {
    assertThat(YARDSTICK).contains(good);
    return catchThrowableOfType(
        DrillFileProblem.class,
        () -> Catalogue.readYardstick("own.yaml", YARDSTICK.replace(good, broken)));
  }

  private static DrillFileProblem problem(String text) {
    DrillFileProblem problem =
        catchThrowableOfType(DrillFileProblem.class, () -> Catalogue.read("own.yaml", text));
    assertThat(problem).as("the file should have been refused").isNotNull();
    return problem;
  }

  private static String quoted(String text) {
    return java.util.regex.Pattern.quote(text);
  }

  private static String quotedBy(String text) {
    return java.util.regex.Matcher.quoteReplacement(text);
  }

  private static String shipped(String file) {
    try {
      return Files.readString(Path.of("src/main/resources/rallywright/drills", file));
    } catch (IOException problem) {
      throw new IllegalStateException(problem);
    }
  }
}
