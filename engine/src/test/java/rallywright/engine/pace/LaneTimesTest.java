package rallywright.engine.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.odds.RallyMoments;
import rallywright.engine.quantity.Probability;
import rallywright.engine.quantity.StandardNormal;
import rallywright.engine.score.GameFormat;

/** Times against a seeded simulation of rallies, and against values computed by hand. */
class LaneTimesTest {

  private static final RallyPace PACE =
      RallyPace.firstIdea(LogNormal.of(8, 5), LogNormal.of(10, 4));
  private static final int RUNS = 40_000;

  private static RallyMoments rallies(double chance) {
    return GameOdds.of(GameFormat.DRILL_GAME, RallyChances.ofRally(Probability.of(chance)))
        .rallies();
  }

  private static double playedGame(SplittableRandom random, double chance) {
    int a = 0;
    int b = 0;
    double seconds = 0;
    double middle = PACE.meanSeconds() / Math.exp(PACE.rallyLogSd() * PACE.rallyLogSd() / 2);
    while (a < 5 && b < 5) {
      boolean won = random.nextDouble() < chance;
      a += won ? 1 : 0;
      b += won ? 0 : 1;
      seconds += middle * Math.exp(PACE.rallyLogSd() * random.nextGaussian());
    }
    return seconds;
  }

  private static double playedLane(SplittableRandom random, double chance, int games) {
    double seconds = 0;
    for (int game = 0; game < games; game++) {
      seconds += playedGame(random, chance);
    }
    return seconds;
  }

  /**
   * Mean and late time within 2 in 100, the spread as well; only where three lanes or more play a
   * single game each does its hard upper limit of nine rallies show, and the spread is within 4.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 0.5, 0.02", "1, 2, 0.5, 0.02", "2, 1, 0.5, 0.02", "2, 2, 0.5, 0.02",
    "4, 1, 0.5, 0.04", "4, 2, 0.5, 0.02", "6, 3, 0.5, 0.02", "3, 1, 0.8, 0.04"
  })
  void lastLane_againstSimulation_isWithinTwoInAHundred(
      int lanes, int games, double chance, double spread) {
    Timing lane = GameTime.of(rallies(chance), PACE).repeated(games);
    Timing last = LaneTimes.of(Collections.nCopies(lanes, lane)).last();
    Timing stretched = last.stretched(SessionTime.DAY_CV);
    SplittableRandom random = new SplittableRandom(7);
    double[] times = new double[RUNS];
    for (int run = 0; run < RUNS; run++) {
      double longest = 0;
      for (int i = 0; i < lanes; i++) {
        longest = Math.max(longest, playedLane(random, chance, games));
      }
      times[run] = longest * (1 + SessionTime.DAY_CV * random.nextGaussian());
    }
    Arrays.sort(times);
    double mean = Arrays.stream(times).average().orElseThrow();
    double sd =
        Math.sqrt(
            Arrays.stream(times).map(time -> time * time).average().orElseThrow() - mean * mean);
    double late = times[(int) (0.9 * RUNS)];
    assertThat(stretched.mean()).isCloseTo(mean, within(0.02 * mean));
    assertThat(stretched.sd()).isCloseTo(sd, within(spread * sd));
    assertThat(stretched.quantile(0.9)).isCloseTo(late, within(0.02 * late));
  }

  /** Third moments of a game to 5 at even chances, summed by hand over the lengths 5 to 9. */
  @Test
  void rallies_ofAnEvenGameToFive_haveTheMomentsOfTheirLengths() {
    double[] chances = {1 / 16.0, 5 / 32.0, 15 / 64.0, 35 / 128.0, 35 / 128.0};
    double mean = 0;
    for (int i = 0; i < 5; i++) {
      mean += chances[i] * (5 + i);
    }
    double third = 0;
    for (int i = 0; i < 5; i++) {
      third += chances[i] * Math.pow(5 + i - mean, 3);
    }
    assertThat(rallies(0.5).third()).isCloseTo(third, within(1e-11));
    assertThat(third).isNegative();
  }

  /** Chi-square with 10 degrees of freedom: its 0.9 point is 15.987 in every table of it. */
  @Test
  void quantile_ofAChiSquare_isThatOfItsTables() {
    Timing chiSquare = new Timing(10, 20, 80);
    assertThat(chiSquare.quantile(0.9)).isCloseTo(15.987, within(0.02));
    assertThat(chiSquare.within(chiSquare.quantile(0.9))).isCloseTo(0.9, within(1e-9));
    assertThat(chiSquare.within(3.940)).isCloseTo(0.05, within(0.002));
  }

  /** Conjugate normal update by hand: prior variance 0.04, one observation of variance 0.25. */
  @Test
  void recordedRally_movesThePaceByTheConjugateWeight() {
    RallyPace pace = new RallyPace(new LogNormal(3, 0.2), 0.5);
    RallyPace after = pace.afterRallies(List.of(Math.exp(4)));
    assertThat(after.typical().logMean()).isCloseTo(3 + 0.04 / 0.29, within(1e-12));
    double variance = after.typical().logSd() * after.typical().logSd();
    assertThat(variance).isCloseTo(0.04 * 0.25 / 0.29, within(1e-12));
    assertThat(pace.afterGame(1, Math.exp(4))).isEqualTo(after);
  }

  @Test
  void session_ninetyInAHundredSimulatedSessions_areDoneByTheQuantile() {
    Timing game = GameTime.of(rallies(0.5), PACE);
    List<SessionTime.Part> parts = new ArrayList<>();
    for (int block = 0; block < 6; block++) {
      Timing time = game.repeated(3).then(Timing.fixed(60));
      parts.add(
          new SessionTime.Part(
              new DrillKey("drill-" + block / 2), time, 3 * game.mean(), PACE.drillCv()));
    }
    double quantile = SessionTime.of(parts).quantile(0.9);
    SplittableRandom random = new SplittableRandom(11);
    double logSd = PACE.typical().logSd();
    int done = 0;
    for (int run = 0; run < RUNS; run++) {
      double sum = 0;
      for (int drill = 0; drill < 3; drill++) {
        double factor = Math.exp(logSd * random.nextGaussian() - logSd * logSd / 2);
        for (int games = 0; games < 6; games++) {
          sum += factor * playedGame(random, 0.5);
        }
        sum += 120;
      }
      done += sum * (1 + SessionTime.DAY_CV * random.nextGaussian()) <= quantile ? 1 : 0;
    }
    assertThat((double) done / RUNS).isBetween(0.88, 0.92);
  }

  /** Values of the normal distribution: Abramowitz and Stegun, table 26.1 (from memory). */
  @Test
  void normal_atKnownPlaces_hasItsTabulatedValues() {
    assertThat(StandardNormal.below(1.96)).isCloseTo(0.9750021049, within(1e-9));
    assertThat(StandardNormal.below(-4)).isCloseTo(3.167124183e-5, within(1e-13));
    assertThat(StandardNormal.quantile(0.9)).isCloseTo(1.2815515655, within(1e-9));
  }
}
