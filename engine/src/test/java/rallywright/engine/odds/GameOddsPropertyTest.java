package rallywright.engine.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rallywright.engine.odds.TestFormats.doubles;
import static rallywright.engine.odds.TestFormats.format;
import static rallywright.engine.odds.TestFormats.serves;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import rallywright.engine.odds.ScoreDistribution.ScoreChance;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Side;

class GameOddsPropertyTest {

  private static double winA(GameFormat format, double a, double b) {
    return GameOdds.of(format, serves(a, b)).winChance(Side.A);
  }

  @Property(tries = 300)
  void swappingSides_swapsWinChances(
      @ForAll Scoring scoring,
      @ForAll @IntRange(min = 1, max = 12) int target,
      @ForAll @IntRange(min = 1, max = 2) int winBy,
      @ForAll @DoubleRange(min = 0.02, max = 0.98) double a,
      @ForAll @DoubleRange(min = 0.02, max = 0.98) double b) {
    GameFormat format = format(scoring, target, winBy);
    double own = winA(format, a, b);
    double other = winA(format.withFirstServer(Side.B), b, a);
    assertThat(own + other).isCloseTo(1, within(1e-12));
  }

  @Property(tries = 300)
  void winChance_risesWithOwnServeAndFallsWithTheirs(
      @ForAll Scoring scoring,
      @ForAll @IntRange(min = 1, max = 9) int target,
      @ForAll @IntRange(min = 1, max = 2) int winBy,
      @ForAll @DoubleRange(min = 0.02, max = 0.9) double a,
      @ForAll @DoubleRange(min = 0.02, max = 0.9) double b) {
    GameFormat format = format(scoring, target, winBy);
    assertThat(winA(format, a + 0.05, b)).isGreaterThanOrEqualTo(winA(format, a, b) - 1e-14);
    assertThat(winA(format, a, b + 0.05)).isLessThanOrEqualTo(winA(format, a, b) + 1e-14);
  }

  @Property(tries = 300)
  void scores_ofAnyGame_sumToOneAndToTheWinChance(@ForAll long seed) {
    RandomGames games = RandomGames.seeded(seed);
    GameFormat format = games.format(9);
    GameOdds odds = GameOdds.of(format, games.chances(format)).from(games.liveState(format));
    ScoreDistribution scores = odds.scores();
    double all = scores.scores().stream().mapToDouble(ScoreChance::chance).sum();
    double ofA =
        scores.scores().stream()
            .filter(listed -> format.goal().winnerAt(listed.score()).orElseThrow() == Side.A)
            .mapToDouble(ScoreChance::chance)
            .sum();
    assertThat(all + scores.tail()).isCloseTo(1, within(1e-12));
    assertThat(ofA).isCloseTo(odds.winChance(Side.A), within(2e-12));
    assertThat(scores.tail()).isBetween(0.0, 1e-12);
  }

  @Property(tries = 200)
  void slope_equalsTheDifferenceQuotient(
      @ForAll Scoring scoring,
      @ForAll @IntRange(min = 1, max = 11) int target,
      @ForAll @IntRange(min = 1, max = 2) int winBy,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double a,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double b) {
    GameFormat format = format(scoring, target, winBy);
    List<Double> slopes = GameOdds.of(format, serves(a, b)).winSlopes();
    double h = 1e-5;
    double byA = (winA(format, a + h, b) - winA(format, a - h, b)) / (2 * h);
    double byB = (winA(format, a, b + h) - winA(format, a, b - h)) / (2 * h);
    assertThat(slopes.get(0)).isCloseTo(byA, within(1e-7 * (1 + Math.abs(byA))));
    assertThat(slopes.get(1)).isCloseTo(byB, within(1e-7 * (1 + Math.abs(byB))));
  }

  @Property(tries = 200)
  void lengths_haveTheMeanOfTheMoments(@ForAll long seed) {
    RandomGames games = RandomGames.seeded(seed);
    GameFormat format = games.format(7);
    GameOdds odds = GameOdds.of(format, games.chances(format)).from(games.liveState(format));
    RallyLengths lengths = odds.lengths(1 - 1e-9);
    double mean = 0;
    double square = 0;
    for (int rallies = 1; rallies <= lengths.longest(); rallies++) {
      mean += rallies * lengths.chanceOf(rallies);
      square += (double) rallies * rallies * lengths.chanceOf(rallies);
    }
    assertThat(mean).isCloseTo(odds.rallies().mean(), within(1e-4));
    assertThat(Math.sqrt(Math.max(0, square - mean * mean)))
        .isCloseTo(odds.rallies().sd(), within(2e-2));
  }

  /** Equal sides, win by one: two servers with the exception take as many rallies as one server. */
  @Property(tries = 200)
  void rallies_ofEqualSides_doNotDependOnTheNumberOfServers(
      @ForAll @IntRange(min = 1, max = 15) int target,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double p) {
    double two = GameOdds.of(doubles(target, 1), serves(p, p)).rallies().mean();
    double one =
        GameOdds.of(format(Scoring.SIDE_OUT_ONE_SERVER, target, 1), serves(p, p)).rallies().mean();
    assertThat(two).isCloseTo(one, within(1e-10 * one));
  }
}
