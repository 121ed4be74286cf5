package rallywright.engine.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
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

  private static RallyMoments rallies() {
    return GameOdds.of(GameFormat.DRILL_GAME, RallyChances.ofRally(Probability.of(0.5))).rallies();
  }

  private static double playedGame(SplittableRandom random) {
    int a = 0;
    int b = 0;
    double seconds = 0;
    while (a < 5 && b < 5) {
      boolean won = random.nextDouble() < 0.5;
      a += won ? 1 : 0;
      b += won ? 0 : 1;
      double middle = PACE.meanSeconds() / Math.exp(PACE.rallyLogSd() * PACE.rallyLogSd() / 2);
      seconds += middle * Math.exp(PACE.rallyLogSd() * random.nextGaussian());
    }
    return seconds;
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "1, 2", "2, 2", "4, 1", "6, 3"})
  void lastLane_againstSimulation_isWithinTwoInAHundred(int lanes, int games) {
    Timing game = GameTime.of(rallies(), PACE);
    List<Timing> sums = new ArrayList<>();
    for (int lane = 0; lane < lanes; lane++) {
      sums.add(game.repeated(games));
    }
    Timing last = LaneTimes.of(sums).last().stretched(SessionTime.DAY_CV);
    SplittableRandom random = new SplittableRandom(7);
    double mean = 0;
    double square = 0;
    for (int run = 0; run < RUNS; run++) {
      double longest = 0;
      for (int lane = 0; lane < lanes; lane++) {
        double sum = 0;
        for (int i = 0; i < games; i++) {
          sum += playedGame(random);
        }
        longest = Math.max(longest, sum);
      }
      double time = longest * (1 + SessionTime.DAY_CV * random.nextGaussian());
      mean += time / RUNS;
      square += time * time / RUNS;
    }
    assertThat(last.mean()).isCloseTo(mean, within(0.02 * mean));
    double sd = Math.sqrt(square - mean * mean);
    assertThat(last.sd()).isCloseTo(sd, within(0.04 * sd));
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
    Timing game = GameTime.of(rallies(), PACE);
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
          sum += factor * playedGame(random);
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
