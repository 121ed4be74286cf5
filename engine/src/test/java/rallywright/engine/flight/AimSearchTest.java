package rallywright.engine.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Chances of success against simulated flights with a fixed seed. */
class AimSearchTest {

  private static final Scatter SCATTER = Scatter.ofLevel(3.5);
  private static final int FLIGHTS = 60_000;

  private static Shot drop() {
    return new Shot(
        new Vector(-6.7, -1.5, 0.6),
        0,
        Target.of(
            new Requirement.ClearsNet(0),
            Requirement.LandsIn.kitchen(),
            Requirement.NotAttackable.AT_THE_LINE),
        new Conditions(Ball.OUTDOOR, Air.of(25, 50, Air.SEA_LEVEL_PA), Wind.constant(-3, 1)));
  }

  private static double simulated(Shot shot, LaunchAim aim, Scatter scatter) {
    SplittableRandom random = new SplittableRandom(11);
    ShotTrial trial = shot.trial();
    int in = 0;
    for (int i = 0; i < FLIGHTS; i++) {
      LaunchAim launch =
          new LaunchAim(
              aim.speed() * (1 + scatter.speed() * random.nextGaussian()),
              aim.elevation() + scatter.elevation() * random.nextGaussian(),
              aim.bearing() + scatter.bearing() * random.nextGaussian());
      in += trial.margin(launch) > 0 ? 1 : 0;
    }
    return (double) in / FLIGHTS;
  }

  /** At level 2.5 some launches are blown back and never get to the net. */
  @ParameterizedTest
  @ValueSource(doubles = {2.5, 3.5, 5.0})
  void chance_againstSimulation_isWithinItsError(double level) {
    Shot shot = drop();
    Scatter scatter = Scatter.ofLevel(level);
    BestAim best = AimSearch.of(shot, scatter).near(Math.toRadians(5)).orElseThrow();
    double simulated = simulated(shot, best.aim(), scatter);
    double error = Math.sqrt(simulated * (1 - simulated) / FLIGHTS);
    assertThat(best.chance()).isCloseTo(simulated, within(1e-3 + 3 * error));
    assertThat(LaunchGrid.Points.AROUND_AN_AIM.flights()).isLessThanOrEqualTo(1000);
  }

  /**
   * Sharp cross-court dinks of a beginner into 12 mph: short balls fall steeply, many are blown
   * back, and what becomes of their heights must not reach to where success ends.
   */
  @ParameterizedTest
  @CsvSource({"7.63, 37.4, 47", "7.8, 42, 52", "7.5, 36, 54"})
  void chance_ofADinkIntoTheWind_againstSimulation_isWithinItsError(
      double speed, double up, double left) {
    Shot dink =
        new Shot(
            new Vector(-1.69, -1.96, 0.4),
            0,
            Target.of(
                new Requirement.ClearsNet(0),
                new Requirement.LandsIn(0, 2.1336, 0, 3.048),
                Requirement.NotAttackable.AT_THE_LINE),
            new Conditions(Ball.OUTDOOR, Conditions.CALM.air(), Wind.constant(-5.5, 1)));
    Scatter scatter = Scatter.ofLevel(3.0);
    LaunchAim aim = LaunchAim.degrees(speed, up, left);
    double simulated = simulated(dink, aim, scatter);
    double error = Math.sqrt(simulated * (1 - simulated) / FLIGHTS);
    assertThat(AimSearch.of(dink, scatter).chanceOf(aim))
        .isCloseTo(simulated, within(1e-3 + 3 * error));
  }

  @Test
  void bestAim_beatsAimsAroundIt() {
    Shot shot = drop();
    AimSearch search = AimSearch.of(shot, SCATTER);
    BestAim best = search.near(Math.toRadians(5)).orElseThrow();
    for (int i = -1; i <= 1; i += 2) {
      LaunchAim aim = best.aim();
      double faster =
          search.chanceOf(
              new LaunchAim(aim.speed() * (1 + 0.05 * i), aim.elevation(), aim.bearing()));
      double higher =
          search.chanceOf(new LaunchAim(aim.speed(), aim.elevation() + 0.05 * i, aim.bearing()));
      assertThat(best.chance()).isGreaterThan(faster).isGreaterThan(higher);
    }
    assertThat(best.chance()).isBetween(0.05, 0.95);
  }

  @Test
  void bestAim_withLessScatter_succeedsMoreOften() {
    Shot shot = drop();
    double usual = AimSearch.of(shot, SCATTER).near(Math.toRadians(5)).orElseThrow().chance();
    double steady =
        AimSearch.of(shot, SCATTER.times(0.8)).near(Math.toRadians(5)).orElseThrow().chance();
    assertThat(steady).isGreaterThan(usual + 0.02);
  }

  /** Less of everything helps more than less of one thing, and each helps. */
  @Test
  void steadier_inEverything_helpsMost() {
    AimSearch search = AimSearch.of(drop(), SCATTER);
    LaunchAim aim = search.near(Math.toRadians(5)).orElseThrow().aim();
    AimSearch.Steadier steadier = search.steadier(aim, 0.75);
    assertThat(steadier.usual()).isEqualTo(search.chanceOf(aim));
    assertThat(steadier.inAll())
        .isGreaterThan(steadier.inSpeed())
        .isGreaterThan(steadier.inElevation())
        .isGreaterThan(steadier.inBearing());
    assertThat(steadier.inSpeed()).isGreaterThan(steadier.usual());
  }
}
