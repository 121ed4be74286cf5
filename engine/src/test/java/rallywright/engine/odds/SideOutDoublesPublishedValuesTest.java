package rallywright.engine.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rallywright.engine.odds.TestFormats.doubles;
import static rallywright.engine.odds.TestFormats.score;
import static rallywright.engine.odds.TestFormats.serve;
import static rallywright.engine.odds.TestFormats.serves;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import rallywright.engine.odds.PublishedTable.Row;
import rallywright.engine.odds.RallyChances.PairChances;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/** Source and tolerance of each table stand in its first lines. */
class SideOutDoublesPublishedValuesTest {

  private static final String[] SERVERS = {"A1", "A2", "B1", "B2"};

  @Test
  void firstServingPair_elevenEvenRallies_hasThePublishedChance() {
    Row row = PublishedTable.read("first-server-chance/published.csv").get(0);
    double chance = GameOdds.of(doubles(11, 2), serves(0.5, 0.5)).winChance(Side.A);
    assertThat(chance).isCloseTo(row.number("p"), within(1e-12));
  }

  @Test
  void chain_ofAGameToN_hasThePublishedStatesAndSign() {
    for (Row row : PublishedTable.read("deford-ethier-2023/chain.csv")) {
      int n = row.whole("n");
      GameOdds odds = GameOdds.of(doubles(n, 2), serves(0.5, 0.5));
      assertThat(odds.states()).isEqualTo(row.whole("states")).isEqualTo(4 * n * n + 10);
      if (row.has("sign")) {
        double difference = odds.winChance(Side.A) - 0.5;
        assertThat(Math.signum(difference)).isEqualTo(row.text("sign").equals("-") ? -1 : 1);
        assertThat(difference).isCloseTo(row.number("difference"), within(1e-13));
      }
    }
  }

  @Test
  void nextPoint_fromEachServer_isTheClosedForm() {
    for (Row row : PublishedTable.read("side-out-doubles/next-point.csv")) {
      GameOdds odds = GameOdds.of(doubles(1, 1), serves(row.number("a"), row.number("b")));
      for (String server : SERVERS) {
        assertThat(odds.from(Score.LOVE_ALL, serve(server)).winChance(Side.A))
            .isCloseTo(row.number(server), within(1e-12));
      }
    }
  }

  @Test
  void game_fromTheStart_hasTheExactChanceAndRallies() {
    for (Row row : PublishedTable.read("side-out-doubles/exact.csv")) {
      GameOdds odds =
          GameOdds.of(
              doubles(row.whole("n"), row.whole("winBy")),
              serves(row.number("a"), row.number("b")));
      if (row.text("exception").equals("no")) {
        odds = odds.from(Score.LOVE_ALL, serve("A1"));
      }
      assertThat(odds.winChance(Side.A)).isCloseTo(row.number("p"), within(1e-12));
      assertThat(odds.rallies().mean()).isCloseTo(row.number("rallies"), within(1e-10));
    }
  }

  @Test
  void grid_ofStrengths_hasAllItsNumbers() {
    for (Row row : PublishedTable.read("side-out-doubles/grid.csv")) {
      GameFormat format = doubles(row.whole("n"), row.whole("winBy"));
      RallyChances chances = serves(row.number("a"), row.number("b"));
      GameOdds odds = GameOdds.of(format, chances);
      GameOdds whole = odds.from(Score.LOVE_ALL, serve("A1"));
      GameOdds second = GameOdds.of(format.withFirstServer(Side.B), chances);
      assertThat(odds.winChance(Side.A)).isCloseTo(row.number("P1"), within(1e-9));
      assertThat(whole.winChance(Side.A)).isCloseTo(row.number("P2"), within(1e-9));
      assertThat(second.winChance(Side.A)).isCloseTo(row.number("P3"), within(1e-9));
      assertThat(odds.rallies().mean()).isCloseTo(row.number("mean"), within(1e-9));
      assertThat(odds.rallies().sd()).isCloseTo(row.number("sd"), within(1e-9));
    }
  }

  @Test
  void liveScore_fromEachServer_hasItsChance() {
    for (Row row : PublishedTable.read("side-out-doubles/live.csv")) {
      GameOdds odds = GameOdds.of(doubles(11, 2), serves(row.number("a"), row.number("b")));
      for (String server : SERVERS) {
        assertThat(odds.from(score(row.text("score")), serve(server)).winChance(Side.A))
            .isCloseTo(row.number(server), within(1e-11));
      }
    }
  }

  @Test
  void ralliesLeft_atTenAllEven_areTheExactFractions() {
    // Expected rallies left at 10-10, a = b = 1/2, to 11, win by 2: A1 5.5, A2 5.875, B1 5.5,
    // B2 5.875 (exact rational arithmetic for this project, with the table of live scores).
    GameOdds odds = GameOdds.of(doubles(11, 2), serves(0.5, 0.5));
    double[] expected = {5.5, 5.875, 5.5, 5.875};
    for (int i = 0; i < SERVERS.length; i++) {
      assertThat(odds.from(Score.of(10, 10), serve(SERVERS[i])).rallies().mean())
          .isCloseTo(expected[i], within(1e-12));
    }
  }

  @Test
  void finalScores_winByOne_haveTheirChances() {
    for (Row row : PublishedTable.read("side-out-doubles/scores.csv")) {
      double p = row.number("ab");
      ScoreDistribution scores = GameOdds.of(doubles(row.whole("n"), 1), serves(p, p)).scores();
      assertThat(scores.chanceOf(score(row.text("score"))))
          .isCloseTo(row.number("chance"), within(1e-14));
      assertThat(scores.tail()).isZero();
    }
    for (Row row : PublishedTable.read("side-out-doubles/points.csv")) {
      double p = row.number("ab");
      ScoreDistribution scores = GameOdds.of(doubles(row.whole("n"), 1), serves(p, p)).scores();
      double points =
          scores.scores().stream().mapToDouble(s -> s.chance() * s.score().total()).sum();
      assertThat(points).isCloseTo(row.number("points"), within(1e-11));
    }
  }

  @Test
  void namedServers_inTheOrderOfTheRules_haveTheirChances() {
    for (Row row : PublishedTable.read("side-out-doubles/named-servers.csv")) {
      RallyChances chances =
          RallyChances.ofServers(
              new PairChances(row.chance("aRight"), row.chance("aLeft")),
              new PairChances(row.chance("bRight"), row.chance("bLeft")));
      GameOdds odds = GameOdds.of(doubles(row.whole("n"), row.whole("winBy")), chances);
      assertThat(odds.winChance(Side.A)).isCloseTo(row.number("p"), within(1e-9));
      if (row.has("mean")) {
        assertThat(odds.rallies().mean()).isCloseTo(row.number("mean"), within(1e-9));
        assertThat(odds.rallies().sd()).isCloseTo(row.number("sd"), within(1e-9));
      }
    }
  }

  @Test
  void secondComputation_ofGames_agrees() {
    for (Row row : PublishedTable.read("side-out-doubles/second-table.csv")) {
      GameOdds odds =
          GameOdds.of(doubles(row.whole("n"), 2), serves(row.number("a"), row.number("b")));
      assertThat(odds.winChance(Side.A)).isCloseTo(row.number("p"), within(row.lastDigit("p")));
      assertThat(odds.rallies().mean())
          .isCloseTo(row.number("mean"), within(row.lastDigit("mean")));
      if (row.has("sd")) {
        assertThat(odds.rallies().sd()).isCloseTo(row.number("sd"), within(row.lastDigit("sd")));
      }
    }
  }

  @Test
  void secondComputation_ofLiveScores_agrees() {
    for (Row row : PublishedTable.read("side-out-doubles/second-live.csv")) {
      double p = row.number("p");
      double chance =
          GameOdds.of(doubles(11, 2), serves(p, p))
              .from(score(row.text("score")), serve("A" + row.text("server")))
              .winChance(Side.A);
      assertThat(chance).isCloseTo(row.number("chance"), Percentage.withPercentage(2e-8));
    }
  }
}
