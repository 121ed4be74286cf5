package rallywright.engine.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rallywright.engine.odds.TestFormats.format;
import static rallywright.engine.odds.TestFormats.rally;
import static rallywright.engine.odds.TestFormats.score;
import static rallywright.engine.odds.TestFormats.serves;

import org.junit.jupiter.api.Test;
import rallywright.engine.odds.PublishedTable.Row;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Serve;
import rallywright.engine.score.Side;

/** Source and tolerance of each table stand in its first lines. */
class RallyScoringPublishedValuesTest {

  private static GameFormat race(int target, int winBy) {
    return format(Scoring.EVERY_RALLY, target, winBy);
  }

  @Test
  void problemOfPoints_anyNeeds_dividesTheStake() {
    for (Row row : PublishedTable.read("problem-of-points/table.csv")) {
      int a = row.whole("aNeeds");
      int b = row.whole("bNeeds");
      GameFormat unequal = race(6, 1).withGoal(Goal.unequal(a, b));
      GameFormat headStart = race(6, 1).withStart(Score.of(6 - a, 6 - b));
      for (GameFormat format : new GameFormat[] {unequal, headStart}) {
        assertThat(GameOdds.of(format, rally(0.5)).winChance(Side.A))
            .isCloseTo(row.number("p"), within(1e-15));
      }
    }
  }

  @Test
  void race_toN_hasAllItsNumbers() {
    for (Row row : PublishedTable.read("rally-scoring/race.csv")) {
      int n = row.whole("n");
      RallyChances chances = rally(row.number("p"));
      GameOdds one = GameOdds.of(race(n, 1), chances);
      GameOdds two = GameOdds.of(race(n, 2), chances);
      assertThat(one.winChance(Side.A)).isCloseTo(row.number("winBy1"), within(1e-12));
      assertThat(one.rallies().mean()).isCloseTo(row.number("mean1"), within(1e-11));
      assertThat(one.rallies().sd()).isCloseTo(row.number("sd1"), within(1e-11));
      assertThat(two.winChance(Side.A)).isCloseTo(row.number("winBy2"), within(1e-12));
      assertThat(two.rallies().mean()).isCloseTo(row.number("mean2"), within(1e-11));
      ScoreDistribution scores = one.scores();
      double level = scores.chanceOf(Score.of(n, n - 1)) + scores.chanceOf(Score.of(n - 1, n));
      assertThat(level).isCloseTo(row.number("level"), within(1e-12));
    }
  }

  @Test
  void finalScores_toFive_haveTheirChances() {
    ScoreDistribution scores = GameOdds.of(race(5, 1), rally(0.6)).scores();
    for (Row row : PublishedTable.read("rally-scoring/scores.csv")) {
      assertThat(scores.chanceOf(score(row.text("score"))))
          .isCloseTo(row.number("chance"), within(1e-15));
    }
    assertThat(scores.scores()).hasSize(10);
  }

  @Test
  void secondComputation_ofTheRace_agrees() {
    for (Row row : PublishedTable.read("rally-scoring/second-race.csv")) {
      GameOdds odds = GameOdds.of(race(row.whole("n"), 2), rally(row.number("p")));
      assertThat(odds.winChance(Side.A))
          .isCloseTo(row.number("win"), within(Math.min(1e-9, row.lastDigit("win"))));
      if (row.has("mean")) {
        assertThat(odds.rallies().mean())
            .isCloseTo(row.number("mean"), within(row.lastDigit("mean")));
      }
    }
  }

  @Test
  void set_toTwentyFive_hasTheExpectedPoints() {
    // Volleyball set to 25, win by 2, p = 1/2: 44.7299408752 expected points, computed exactly for
    // this project; asked as an open puzzle at perplexus.info.
    double mean = GameOdds.of(race(25, 2), rally(0.5)).rallies().mean();
    assertThat(mean).isCloseTo(44.7299408752, within(1e-10));
  }

  @Test
  void tennisGame_anyChance_hasItsNumbers() {
    for (Row row : PublishedTable.read("tennis-game/games.csv")) {
      RallyChances chances = rally(row.number("p"));
      GameOdds odds = GameOdds.of(race(4, 2), chances);
      assertThat(odds.winChance(Side.A)).isCloseTo(row.number("game"), within(1e-12));
      assertThat(odds.from(Score.of(3, 3), Serve.by(Side.A)).winChance(Side.A))
          .isCloseTo(row.number("fromDeuce"), within(1e-12));
      assertThat(odds.rallies().mean()).isCloseTo(row.number("points"), within(1e-11));
      ScoreDistribution toFour = GameOdds.of(race(4, 1), chances).scores();
      double deuce = toFour.chanceOf(Score.of(4, 3)) + toFour.chanceOf(Score.of(3, 4));
      assertThat(deuce).isCloseTo(row.number("deuce"), within(1e-12));
    }
  }

  @Test
  void tennisGame_trefethensForm_agrees() {
    // P = 1/2 + (10r - 5r^3 + 4r^5 - r^7)/(8 + 8r^2), r = 2p - 1: Trefethen, 13 July 2023.
    for (double p = 0.05; p < 1; p += 0.05) {
      double r = 2 * p - 1;
      double form =
          0.5
              + (10 * r - 5 * Math.pow(r, 3) + 4 * Math.pow(r, 5) - Math.pow(r, 7))
                  / (8 + 8 * r * r);
      assertThat(GameOdds.of(race(4, 2), rally(p)).winChance(Side.A))
          .isCloseTo(form, within(1e-14));
    }
  }

  @Test
  void winnerServes_anyStrengths_hasItsChance() {
    for (Row row : PublishedTable.read("rally-scoring/winner-serves.csv")) {
      GameFormat format = format(Scoring.RALLY_2026, row.whole("n"), row.whole("winBy"));
      assertThat(GameOdds.of(format, serves(row.number("a"), row.number("b"))).winChance(Side.A))
          .isCloseTo(row.number("p"), within(1e-12));
    }
  }

  @Test
  void level_equalSides_favoursTheReceiverByTheFormula() {
    for (Row row : PublishedTable.read("rally-scoring/from-level.csv")) {
      double p = row.number("p");
      GameOdds odds = GameOdds.of(race(11, 2), serves(p, p));
      double chance = odds.from(Score.of(10, 10), Serve.by(Side.A)).winChance(Side.A);
      assertThat(chance).isCloseTo(row.number("first"), within(1e-14));
      assertThat(chance).isCloseTo(1 / (3 - 2 * p), within(1e-14));
    }
  }

  @Test
  void lastPointOnServe_anyStrengths_hasAllItsNumbers() {
    for (Row row : PublishedTable.read("rally-scoring/last-point-on-serve.csv")) {
      GameFormat format = format(Scoring.RALLY_2025, row.whole("n"), row.whole("winBy"));
      GameOdds odds = GameOdds.of(format, serves(row.number("a"), row.number("b")));
      assertThat(odds.winChance(Side.A)).isCloseTo(row.number("p"), within(1e-9));
      assertThat(odds.rallies().mean()).isCloseTo(row.number("mean"), within(1e-9));
      assertThat(odds.rallies().sd()).isCloseTo(row.number("sd"), within(1e-9));
    }
  }
}
