package rallywright.engine.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rallywright.engine.odds.TestFormats.doubles;
import static rallywright.engine.odds.TestFormats.serves;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.score.WinBy;

/**
 * The odds against a second way to the same numbers: the chain explored from the scoring states
 * themselves and solved as one full linear system.
 */
class LiteralChainTest {

  private static final int GAMES = 400;

  @Test
  void odds_ofRandomGamesAndLiveScores_equalTheDenseSolution() {
    for (int seed = 0; seed < GAMES; seed++) {
      RandomGames games = RandomGames.seeded(seed);
      GameFormat format = games.format(6);
      RallyChances chances = games.chances(format);
      GameState live = games.liveState(format);
      LiteralChain chain = LiteralChain.explore(live, LiteralChain::twoPointsBack);
      double[] dense = chain.solve(chances);
      GameOdds odds = GameOdds.of(format, chances).from(live);
      String what = seed + ": " + live + " " + chances;
      assertThat(odds.winChance(Side.A)).as(what).isCloseTo(dense[0], within(1e-11));
      RallyMoments rallies = odds.rallies();
      double sd = Math.sqrt(Math.max(0, dense[2] - dense[1] * dense[1]));
      assertThat(rallies.mean()).as(what).isCloseTo(dense[1], within(1e-9 * dense[1]));
      assertThat(rallies.sd()).as(what).isCloseTo(sd, within(1e-6 * dense[1]));
      for (double chance : new double[] {0.1, 0.5, 0.9}) {
        assertThat(odds.lengths(0.95).quantile(chance))
            .as(what)
            .isEqualTo(chain.quantile(chances, chance));
      }
    }
  }

  @Test
  void scores_ofGamesThatEnd_equalTheDenseSolution() {
    int compared = 0;
    for (int seed = 0; seed < GAMES; seed++) {
      RandomGames games = RandomGames.seeded(seed);
      GameFormat format = games.format(6);
      boolean endless = format.goal().winBy() == WinBy.TWO && format.goal().cap().isEmpty();
      if (!endless) {
        RallyChances chances = games.chances(format);
        GameState live = games.liveState(format);
        Map<Score, Double> dense =
            LiteralChain.explore(live, UnaryOperator.identity()).scores(chances);
        ScoreDistribution scores = GameOdds.of(format, chances).from(live).scores();
        assertThat(scores.scores()).hasSameSizeAs(dense.entrySet());
        dense.forEach(
            (score, chance) -> assertThat(scores.chanceOf(score)).isCloseTo(chance, within(1e-12)));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(GAMES / 2);
  }

  @Test
  void slopes_ofRandomGames_equalTheDenseDifferenceQuotient() {
    double step = 1e-5;
    for (int seed = 0; seed < 100; seed++) {
      RandomGames games = RandomGames.seeded(seed);
      GameFormat format = games.format(4);
      RallyChances chances = games.chances(format);
      GameState live = games.liveState(format);
      LiteralChain chain = LiteralChain.explore(live, LiteralChain::twoPointsBack);
      List<Double> slopes = GameOdds.of(format, chances).from(live).winSlopes();
      for (int i = 0; i < slopes.size(); i++) {
        double up = chain.solve(moved(chances, i, step))[0];
        double down = chain.solve(moved(chances, i, -step))[0];
        assertThat(slopes.get(i)).isCloseTo((up - down) / (2 * step), within(1e-6));
      }
    }
  }

  @Test
  void tieBreak_playedOutWithoutAnyFold_givesTheListedScores() {
    // Far beyond any likely end the unfolded chain is cut by a cap; what the cap changes is smaller
    // than the tolerance: 0.6 to the power of 60 is 5e-14.
    GameFormat open = doubles(3, 2);
    GameFormat capped = open.withGoal(open.goal().withCap(63));
    RallyChances chances = serves(0.5, 0.45);
    Map<Score, Double> dense =
        LiteralChain.explore(GameState.start(capped), UnaryOperator.identity()).scores(chances);
    ScoreDistribution scores = GameOdds.of(open, chances).scores();
    assertThat(scores.scores()).hasSizeGreaterThan(40);
    assertThat(scores.tail()).isBetween(0.0, 1e-12);
    for (ScoreDistribution.ScoreChance listed : scores.scores()) {
      assertThat(listed.chance()).isCloseTo(dense.getOrDefault(listed.score(), 0.0), within(1e-11));
    }
  }

  private static RallyChances moved(RallyChances chances, int index, double step) {
    List<Double> values =
        new java.util.ArrayList<>(chances.values().stream().map(Probability::value).toList());
    values.set(index, values.get(index) + step);
    List<Probability> moved = values.stream().map(Probability::of).toList();
    return switch (moved.size()) {
      case 1 -> RallyChances.ofRally(moved.get(0));
      case 2 -> RallyChances.ofServe(moved.get(0), moved.get(1));
      default ->
          RallyChances.ofServers(
              new RallyChances.PairChances(moved.get(0), moved.get(1)),
              new RallyChances.PairChances(moved.get(2), moved.get(3)));
    };
  }
}
