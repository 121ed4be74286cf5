package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

class GameForecastTest {
  private static final Sides PAIR = Sides.of(0, 1);
  private static final Weights ONE = Weights.of(1, 0);
  private static final Weights OTHER = Weights.of(0, 1);

  private static Posterior posterior(double levelA, double levelB) {
    Club club =
        new Club(
            new SkillGroups(List.of(0, 1)),
            List.of(Entrant.atLevel(levelA), Entrant.atLevel(levelB)),
            List.of(new SharedEffect("server v receiver", -0.2, 0.4)));
    Game game = new Game(0, Contest.even(ONE), PAIR, new RalliesWon(5, 4));
    return SkillModel.of(club, SkillPrior.DEFAULT).fit(List.of(game), Set.of(0));
  }

  /** First to 5, every rally scores: the textbook sum over the last rally. */
  private static Map<Score, Double> toFive(double p) {
    Map<Score, Double> scores = new HashMap<>();
    double ways = 1;
    for (int k = 0; k < 5; k++) {
      scores.put(Score.of(5, k), ways * Math.pow(p, 5) * Math.pow(1 - p, k));
      scores.put(Score.of(k, 5), ways * Math.pow(1 - p, 5) * Math.pow(p, k));
      ways = ways * (5 + k) / (k + 1);
    }
    return scores;
  }

  /** A's chance to win from a start in the same game. */
  private static double win(Score start, double p) {
    if (start.a() == 5 || start.b() == 5) {
      return start.a() == 5 ? 1 : 0;
    }
    return p * win(start.pointTo(Side.A), p) + (1 - p) * win(start.pointTo(Side.B), p);
  }

  @Test
  void scores_ofAnEvenDrill_areThoseOfTheIntegralOverTheEdge() {
    GameForecast forecast = GameForecast.of(posterior(3.5, 4), Contest.even(ONE), PAIR, 0);
    ScoreForecast scores = forecast.scores((serveA, serveB) -> toFive(serveA));
    Estimate edge = forecast.serverEdge(Side.A);
    double win = 0;
    double points = 0;
    int steps = 200_000;
    for (int i = 0; i < steps; i++) {
      double z = -10 + 20 * (i + 0.5) / steps;
      double weight = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * 20 / steps;
      double p = Logistic.chance(edge.mean() + edge.sd() * z);
      for (Map.Entry<Score, Double> entry : toFive(p).entrySet()) {
        win += entry.getKey().a() == 5 ? weight * entry.getValue() : 0;
        points += weight * entry.getValue() * entry.getKey().a();
      }
    }
    assertThat(scores.winA()).isCloseTo(win, within(1e-7));
    assertThat(scores.pointsA()).isCloseTo(points, within(1e-6));
    assertThat(forecast.expect((serveA, serveB) -> serveA + serveB)).isCloseTo(1, within(1e-9));
  }

  @Test
  void range80_ofScores_leavesOutATenthOnEachSideAtMost() {
    GameForecast forecast = GameForecast.of(posterior(3.5, 4), Contest.even(ONE), PAIR, 0);
    ScoreForecast scores = forecast.scores((serveA, serveB) -> toFive(serveA));
    List<Score> range = scores.range80();
    assertThat(1 - scores.chanceOfAtLeast(range.get(0))).isLessThan(0.1);
    assertThat(scores.chanceOfAtLeast(range.get(1)) - scores.chanceOf(range.get(1)))
        .isLessThanOrEqualTo(0.1);
    assertThat(scores.chanceOfAtLeast(range.get(0))).isGreaterThan(0.9);
  }

  @Test
  void expectation_overTwoEdges_isThatOfManyDraws() {
    Contest contest = new Contest(ONE, OTHER, Contest.Roles.BY_SERVE, List.of(0));
    Posterior posterior = posterior(3, 4);
    GameForecast forecast = GameForecast.of(posterior, contest, PAIR, 0);
    SkillSum whenA = contest.serverEdge(PAIR, 0, Side.A);
    SkillSum whenB = contest.serverEdge(PAIR, 0, Side.B);
    Estimate a = posterior.of(whenA);
    Estimate b = posterior.of(whenB);
    double slope = posterior.covariance(whenA, whenB) / a.sd();
    double rest = Math.sqrt(b.sd() * b.sd() - slope * slope);
    Random random = new Random(7);
    double sum = 0;
    int draws = 400_000;
    for (int i = 0; i < draws; i++) {
      double z = random.nextGaussian();
      double etaA = a.mean() + a.sd() * z;
      double etaB = b.mean() + slope * z + rest * random.nextGaussian();
      sum += Math.pow(Logistic.chance(etaA), 2) * Logistic.chance(etaB);
    }
    // Monte Carlo error about 0.0004.
    assertThat(forecast.expect((pA, pB) -> pA * pA * pB)).isCloseTo(sum / draws, within(0.002));
  }

  @Test
  void fairHeadStart_forUnevenPlayers_goesToTheWeakerSide() {
    GameForecast forecast = GameForecast.of(posterior(3, 4.5), Contest.even(ONE), PAIR, 0);
    GameForecast.HeadStart found =
        forecast.fairHeadStart(
            Goal.firstTo(5), Probability.EVEN, start -> (pA, pB) -> win(start, pA));
    double without = forecast.expect((pA, pB) -> win(Score.LOVE_ALL, pA));
    assertThat(without).isLessThan(0.4);
    assertThat(found.start().a()).isBetween(1, 4);
    assertThat(found.start().b()).isZero();
    for (int points = 0; points < 5; points++) {
      Score start = Score.of(points, 0);
      assertThat(Math.abs(forecast.expect((pA, pB) -> win(start, pA)) - 0.5))
          .isGreaterThanOrEqualTo(Math.abs(found.winA() - 0.5));
    }
  }

  @Test
  void fairHeadStart_forEvenPlayers_isNone() {
    Posterior posterior = posterior(4, 4);
    Contest untouched = Contest.even(OTHER);
    GameForecast forecast = GameForecast.of(posterior, untouched, PAIR, 0);
    assertThat(
            forecast
                .fairHeadStart(
                    Goal.firstTo(5), Probability.EVEN, start -> (pA, pB) -> win(start, pA))
                .start())
        .isEqualTo(Score.LOVE_ALL);
  }

  @Test
  void estimate_ofAStandardNormal_hasTabulatedChances() {
    // Abramowitz and Stegun (1964), table 26.1.
    Estimate standard = new Estimate(0, 1);
    assertThat(standard.chanceAbove(1)).isCloseTo(1 - 0.841344746068543, within(1e-14));
    assertThat(standard.chanceAbove(-2)).isCloseTo(0.977249868051821, within(1e-14));
    assertThat(standard.chanceAbove(standard.high80())).isCloseTo(0.1, within(1e-14));
    assertThat(new Estimate(2, 0).chanceAbove(1)).isEqualTo(1);
  }
}
