package rallywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RotateCommandTest {

  private static String run(String flags) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine command = Rallywright.commandLine();
    command.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    int code = command.execute(("rotate " + flags).split(" ", -1));
    assertThat(code).as(err.toString()).isZero();
    assertThat(err.toString()).isEmpty();
    return out.toString();
  }

  private static JsonNode json(String flags) {
    return JsonMapper.builder().build().readTree(run(flags + " --json"));
  }

  @Test
  void json_ofEightOnTwoCourts_isAWhistTournament() {
    JsonNode answer = json("--players 8 --courts 2 --rounds 7");
    Map<Set<Integer>, Integer> partners = new HashMap<>();
    for (JsonNode round : answer.get("rounds")) {
      Set<Integer> seen = new HashSet<>();
      for (JsonNode match : round.get("matches")) {
        for (String side : new String[] {"a", "b"}) {
          int one = match.get(side).get(0).asInt();
          int other = match.get(side).get(1).asInt();
          assertThat(seen.add(one) && seen.add(other)).isTrue();
          partners.merge(Set.of(one, other), 1, Integer::sum);
        }
        assertThat(match.get("lane").isNull()).isTrue();
      }
      assertThat(seen).hasSize(8);
      assertThat(round.get("sitting").size()).isZero();
    }
    assertThat(partners).hasSize(28);
    assertThat(answer.get("partnerRepeats").asInt(-1)).isZero();
    assertThat(answer.get("opponentExcess").asInt(-1)).isZero();
    assertThat(answer.get("worstDifference").asDouble(-1)).isZero();
    // Seven rounds of some 35 rallies (33.5 and 39.3 in published finals) of 22 s, and a minute
    // each to change places: about 100 minutes; the later of two courts makes them more.
    double mean = answer.at("/minutes/mean").asDouble();
    assertThat(mean).isBetween(90.0, 130.0);
    assertThat(answer.at("/minutes/nineInTen").asDouble()).isBetween(1.05 * mean, 1.4 * mean);
  }

  @Test
  void json_ofStrengths_hasTheWorstDifferenceOfItsMatches() {
    double[] strengths = {1.5, 0.5, 0, -0.5, -1, 0.25};
    JsonNode answer =
        json("--players 6 --courts 1 --rounds 4 --strengths 1.5,0.5,0,-0.5,-1,0.25 --seed 3");
    double worst = 0;
    for (JsonNode round : answer.get("rounds")) {
      for (JsonNode match : round.get("matches")) {
        double difference = 0;
        for (int place = 0; place < 2; place++) {
          difference += strengths[match.get("a").get(place).asInt() - 1] / 2;
          difference -= strengths[match.get("b").get(place).asInt() - 1] / 2;
        }
        worst = Math.max(worst, Math.abs(difference));
      }
      assertThat(round.get("sitting").size()).isEqualTo(2);
    }
    assertThat(answer.get("worstDifference").asDouble()).isCloseTo(worst, within(1e-12));
  }

  @Test
  void json_ofLanes_hasTwoLanesOnACourt_andUnevenMatchesAHeadStart() {
    JsonNode answer = json("--players 4 --courts 1 --rounds 3 --game lanes --strengths 2,0,0,-2");
    assertThat(answer.at("/rounds/0/matches").size()).isEqualTo(2);
    assertThat(answer.at("/rounds/2/matches/1/lane").asInt()).isEqualTo(2);
    assertThat(answer.get("worstDifference").asDouble()).isEqualTo(4);
    assertThat(answer.toString()).containsPattern("\"headStart\":\\{\"a\":[0-4],\"b\":[1-4]");
  }

  @Test
  void table_forPeople_hasOneLineForEachRound() {
    String table = run("--players 13 --courts 3 --rounds 8 --apart 2-9");
    assertThat(table)
        .contains("round", "court 3", "sit out", "never twice running")
        .contains("8 rounds to 11 without a horn take about", "nine times in ten at most")
        .contains("Nobody has the same partners twice.");
    assertThat(table.lines().filter(line -> line.contains(" v "))).hasSize(8);
    assertThat(run("--players 13 --courts 3 --rounds 8 --apart 2-9")).isEqualTo(table);
    assertThat(run("--players 5 --courts 1 --rounds 2 --game lanes"))
        .contains("court 1 lane 2", "same opponents");
  }

  @Test
  void json_ofFixedPairs_hasEachPairAgainstEach() {
    JsonNode answer = json("--players 8 --courts 1 --rounds 60 --partners fixed");
    Set<Set<Integer>> meetings = new HashSet<>();
    for (JsonNode round : answer.get("rounds")) {
      JsonNode match = round.get("matches").get(0);
      int a = match.get("a").get(0).asInt();
      int b = match.get("b").get(0).asInt();
      assertThat(match.get("a").get(1).asInt()).isEqualTo(a + 1);
      meetings.add(Set.of(a, b));
    }
    assertThat(answer.get("rounds")).hasSize(6);
    assertThat(meetings).hasSize(6);
  }

  @Test
  void json_ofCouples_neverPairsACouple() {
    JsonNode answer = json("--players 10 --courts 2 --rounds 60 --partners couples");
    for (JsonNode round : answer.get("rounds")) {
      for (JsonNode match : round.get("matches")) {
        int man = match.get("a").get(0).asInt();
        assertThat(man % 2).isEqualTo(1);
        assertThat(match.get("a").get(1).asInt() % 2).isZero();
        assertThat(match.get("a").get(1).asInt()).isNotEqualTo(man + 1);
      }
    }
    // Five couples: each pair of men meets in one game.
    int games = 0;
    for (JsonNode round : answer.get("rounds")) {
      games += round.get("matches").size();
    }
    assertThat(games).isEqualTo(10);
  }

  @Test
  void pdf_isWrittenBesideTheTable(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("rotation.pdf");
    assertThat(run("--players 8 --courts 2 --rounds 7 --pdf " + file)).contains("Nobody sits out");
    assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
  }
}
