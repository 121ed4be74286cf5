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
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Serve;
import rallywright.engine.score.Side;

/** Source and tolerance of each table stand in its first lines. */
class SideOutSinglesPublishedValuesTest {

  private static GameFormat singles(int target, int winBy) {
    return format(Scoring.SIDE_OUT_ONE_SERVER, target, winBy);
  }

  @Test
  void game_ofOneServerASide_hasTheExactChanceAndRallies() {
    for (Row row : PublishedTable.read("side-out-singles/games.csv")) {
      GameOdds odds =
          GameOdds.of(singles(row.whole("n"), 1), serves(row.number("a"), row.number("b")));
      assertThat(odds.winChance(Side.A)).isCloseTo(row.number("p"), within(1e-12));
      assertThat(odds.rallies().mean()).isCloseTo(row.number("rallies"), within(1e-10));
    }
  }

  @Test
  void finalScores_toNine_haveTheirChances() {
    ScoreDistribution scores = GameOdds.of(singles(9, 1), serves(0.5, 0.5)).scores();
    for (Row row : PublishedTable.read("side-out-singles/scores.csv")) {
      assertThat(scores.chanceOf(score(row.text("score"))))
          .isCloseTo(row.number("chance"), within(1e-14));
    }
    assertThat(scores.scores()).hasSize(18);
  }

  @Test
  void shutout_toTwentyOne_isKellersFormula() {
    for (Row row : PublishedTable.read("keller-1984/shutout.csv")) {
      GameFormat format = singles(21, 1);
      RallyChances chances = rally(row.number("p"));
      double aFirst = shutout(format, chances);
      double bFirst = shutout(format.withFirstServer(Side.B), chances);
      assertThat(aFirst).isCloseTo(row.number("aFirst"), within(1e-11 * aFirst));
      assertThat(bFirst).isCloseTo(row.number("bFirst"), within(1e-11 * bFirst));
      assertThat((aFirst + bFirst) / 2).isCloseTo(row.number("coin"), within(1e-11 * aFirst));
    }
  }

  @Test
  void shutout_atKellersHalf_isAsLikelyAsNot() {
    // Root of Keller's formula at 1/2: 0.842304791036 (asked within 1e-3 in a textbook exercise).
    RallyChances chances = rally(0.842304791036);
    double coin =
        (shutout(singles(21, 1), chances)
                + shutout(singles(21, 1).withFirstServer(Side.B), chances))
            / 2;
    assertThat(coin).isCloseTo(0.5, within(1e-10));
  }

  @Test
  void squash_atEightAll_isTheNextPointOrTwo() {
    for (Row row : PublishedTable.read("squash-1390/calls.csv")) {
      RallyChances chances = rally(row.number("p"));
      assertThat(receiverWins(1, chances)).isCloseTo(row.number("call9"), within(1e-10));
      assertThat(receiverWins(2, chances)).isCloseTo(row.number("call10"), within(1e-10));
    }
    RallyChances breakEven = rally((3 - Math.sqrt(5)) / 2);
    assertThat(receiverWins(1, breakEven)).isCloseTo(receiverWins(2, breakEven), within(1e-12));
  }

  @Test
  void lead_ofOneBeforeTheServeIsLost_isTwoThirds() {
    // p/(1-pq) = 2/3 at p = 1/2: Bradley University, Problem of the Week 165, solution.
    GameOdds odds = GameOdds.of(singles(1, 1), serves(0.5, 0.5));
    assertThat(odds.winChance(Side.A)).isCloseTo(2.0 / 3, within(1e-15));
  }

  @Test
  void level_winByTwo_isUnfinishedAsInTheExercises() {
    for (Row row : PublishedTable.read("rally-scoring/unfinished.csv")) {
      GameFormat format = format(Scoring.valueOf(row.text("scoring")), row.whole("level") + 1, 2);
      double p = row.number("p");
      RallyLengths lengths =
          GameOdds.of(format, serves(p, p))
              .from(Score.of(row.whole("level"), row.whole("level")), Serve.by(Side.B))
              .lengths(0.99);
      double unfinished = 1;
      for (int rallies = 1; rallies <= row.whole("rallies"); rallies++) {
        unfinished -= lengths.chanceOf(rallies);
      }
      assertThat(unfinished).isCloseTo(row.number("unfinished"), within(1e-14));
    }
  }

  private static double shutout(GameFormat format, RallyChances chances) {
    return GameOdds.of(format, chances).scores().chanceOf(Score.of(21, 0));
  }

  private static double receiverWins(int points, RallyChances chances) {
    return GameOdds.of(singles(points, 1).withFirstServer(Side.B), chances).winChance(Side.A);
  }
}
