package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.WinBy;
import rallywright.engine.skill.ScorePath.Counting;
import rallywright.engine.skill.ScorePath.Ending;
import rallywright.engine.skill.ScorePath.FirstServer;

class ChainLikelihoodTest {

  /** Exact fractions of the one-server recursion for a game to 9, both 1/2, A serves first. */
  @ParameterizedTest
  @CsvSource({
    "9, 0, 512, 19683",
    "9, 3, 11008, 177147",
    "9, 8, 983650, 14348907",
    "8, 9, 1000505, 14348907",
    "4, 9, 10592, 177147",
    "0, 9, 256, 19683"
  })
  void sideOutScore_toNineWithEvenChances_hasExactFraction(
      int a, int b, double over, double under) {
    assertThat(chance(path(Score.of(a, b), Ending.FINISHED, FirstServer.A), 0.5, 0.5))
        .isCloseTo(over / under, within(1e-14));
  }

  /** J. B. Keller, Probability of a shutout in racquetball, SIAM Review 26 (1984). */
  @ParameterizedTest
  @CsvSource({"0.5, 1.503643299109e-04", "0.7, 6.703611678961e-02", "0.9, 7.532637444265e-01"})
  void shutout_toTwentyOneAfterCoinToss_isKellers(double p, double expected) {
    ScorePath path =
        new ScorePath(
            Counting.SERVER_ONLY,
            Score.LOVE_ALL,
            Score.of(21, 0),
            Goal.firstTo(21),
            Ending.FINISHED,
            FirstServer.UNKNOWN);
    assertThat(chance(path, p, 1 - p)).isCloseTo(expected, within(1e-12));
  }

  /** Mean rallies of a game to 9 from the same exact recursion. */
  @ParameterizedTest
  @CsvSource({"0.5, 0.5, 27.522590675373", "0.6, 0.4, 23.903904104534"})
  void timeCalled_overAllScores_addsUpToTheRalliesOfAGame(double pA, double pB, double rallies) {
    double sum = 0;
    for (int a = 0; a < 9; a++) {
      for (int b = 0; b < 9; b++) {
        sum += chance(path(Score.of(a, b), Ending.TIME_CALLED, FirstServer.A), pA, pB);
      }
    }
    assertThat(sum).isCloseTo(rallies, within(1e-9));
  }

  @Test
  void timeCalled_atAScore_isNotTheChanceToPassThroughIt() {
    Score score = Score.of(4, 4);
    ScorePath stood = path(score, Ending.TIME_CALLED, FirstServer.A);
    double passed = 0;
    double atHorn = 0;
    MassByRallies mass = new MassByRallies(stood, 0.4, 0.3);
    for (int rally = 0; rally < 4000; rally++) {
      atHorn += mass.at(score);
      mass.play();
      passed = mass.everAt(score);
    }
    assertThat(chance(stood, 0.4, 0.3)).isCloseTo(atHorn, within(1e-12));
    assertThat(chance(stood, 0.4, 0.3)).isGreaterThan(1.3 * passed);
  }

  @ParameterizedTest
  @CsvSource({
    "SERVER_ONLY, A, 5, 1, 2-0",
    "SERVER_ONLY, B, 7, 2, 0-3",
    "SERVER_ONLY, UNKNOWN, 5, 2, 0-0",
    "EVERY_RALLY, A, 5, 1, 0-2",
    "EVERY_RALLY, B, 5, 2, 0-0",
    "EVERY_RALLY, UNKNOWN, 11, 1, 4-0"
  })
  void finishedScores_ofEveryFormat_areThoseOfPlayingRallyByRally(
      Counting counting, FirstServer first, int target, int winBy, String head) {
    Goal goal = Goal.firstTo(target).withWinBy(winBy == 1 ? WinBy.ONE : WinBy.TWO);
    Score start = points(head);
    int checked = 0;
    double sum = 0;
    for (int a = start.a(); a <= target + 6; a++) {
      for (int b = start.b(); b <= target + 6; b++) {
        if (reachesEnd(a, b, goal)) {
          ScorePath path =
              new ScorePath(counting, start, Score.of(a, b), goal, Ending.FINISHED, first);
          double chance = chance(path, 0.45, 0.6);
          assertThat(chance).isCloseTo(playedOut(path, 0.45, 0.6), within(1e-12));
          sum += chance;
          checked++;
        }
      }
    }
    assertThat(checked).isGreaterThanOrEqualTo(8);
    assertThat(sum).isCloseTo(1, within(winBy == 1 ? 1e-12 : 0.1));
  }

  private static double playedOut(ScorePath path, double serveA, double serveB) {
    MassByRallies mass = new MassByRallies(path, serveA, serveB);
    for (int rally = 0; rally < 1000; rally++) {
      mass.play();
    }
    return mass.at(path.end());
  }

  private static Score points(String text) {
    String[] parts = text.split("-", 2);
    return Score.of(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
  }

  private static boolean reachesEnd(int a, int b, Goal goal) {
    return goal.winnerAt(Score.of(a, b)).isPresent()
        && goal.isOpenAt(a > b ? Score.of(a - 1, b) : Score.of(a, b - 1));
  }

  @ParameterizedTest
  @CsvSource({
    "3-5, 4-5, FINISHED, The head start (3-5) must be below the target of a game to 5",
    "2-0, 1-5, FINISHED, The score (1-5) must not lie below the head start (2-0).",
    "0-0, 3-4, FINISHED, The score (3-4) cannot be where a game to 5",
    "0-0, 6-5, FINISHED, The score (6-5) cannot be where a game to 5",
    "0-0, 5-5, FINISHED, The score (5-5) cannot be where a game to 5",
    "0-0, 5-4, TIME_CALLED, The score (5-4) cannot be where a game to 5"
  })
  void score_thatTheRulesCannotReach_isRefused(
      String start, String end, Ending ending, String words) {
    assertThatThrownBy(
            () ->
                new ScorePath(
                    Counting.SERVER_ONLY,
                    points(start),
                    points(end),
                    Goal.firstTo(5),
                    ending,
                    FirstServer.A))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(words)
        .hasMessageContaining("Maybe");
  }

  @Test
  void evidence_ofTwoChances_hasDerivativesOfItsDifferenceQuotients() {
    ChainLikelihood likelihood =
        new ChainLikelihood(path(Score.of(9, 6), Ending.FINISHED, FirstServer.UNKNOWN));
    double h = 1e-5;
    for (double[] eta : new double[][] {{0.3, -0.4}, {-1.2, 0.8}, {2, 2}}) {
      Likelihood.Curve curve = likelihood.at(eta[0], eta[1]);
      Likelihood.Curve up = likelihood.at(eta[0] + h, eta[1]);
      Likelihood.Curve down = likelihood.at(eta[0] - h, eta[1]);
      Likelihood.Curve right = likelihood.at(eta[0], eta[1] + h);
      Likelihood.Curve left = likelihood.at(eta[0], eta[1] - h);
      assertThat(curve.d1()).isCloseTo((up.value() - down.value()) / (2 * h), within(1e-7));
      assertThat(curve.d2()).isCloseTo((right.value() - left.value()) / (2 * h), within(1e-7));
      assertThat(curve.d11()).isCloseTo((up.d1() - down.d1()) / (2 * h), within(1e-7));
      assertThat(curve.d12()).isCloseTo((up.d2() - down.d2()) / (2 * h), within(1e-7));
      assertThat(curve.d22()).isCloseTo((right.d2() - left.d2()) / (2 * h), within(1e-7));
    }
  }

  private static ScorePath path(Score end, Ending ending, FirstServer first) {
    return new ScorePath(Counting.SERVER_ONLY, Score.LOVE_ALL, end, Goal.firstTo(9), ending, first);
  }

  private static double chance(ScorePath path, double serveA, double serveB) {
    return new ChainLikelihood(path).chance(Jet.constant(serveA), Jet.constant(serveB)).value();
  }
}
