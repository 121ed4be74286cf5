package rallywright.engine.aim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.aim.ShotAnswer.BestShot;
import rallywright.engine.aim.ShotSetting.Area;
import rallywright.engine.aim.ShotSetting.Place;
import rallywright.engine.flight.FlightSolver;
import rallywright.engine.flight.Launch;
import rallywright.engine.flight.LaunchAim;
import rallywright.engine.flight.Ranged;
import rallywright.engine.flight.Scatter;
import rallywright.engine.flight.Vector;

/** What a shot allows: against simulated flights, and as coaches know it. */
class ShotStudyTest {

  private static final Map<UsualShot, ShotAnswer> FULL =
      Arrays.stream(UsualShot.values())
          .collect(Collectors.toMap(shot -> shot, shot -> ShotStudy.full(shot.usual())));

  private static final double MPH = 0.44704;

  /** The rule book's bounce: from 78 in a ball comes back at most 34 in, the net's middle. */
  private static final double BOUNCE_TEST_M = 78 * 0.0254;

  private static ShotAnswer full(UsualShot shot) {
    return Objects.requireNonNull(FULL.get(shot));
  }

  @ParameterizedTest
  @EnumSource
  void usualShot_canBeHit_andTheQuickAnswerIsNear(UsualShot shot) {
    ShotAnswer full = full(shot);
    ShotAnswer live = ShotStudy.live(shot.usual());
    double chance = full.best().orElseThrow().aim().chance();
    assertThat(chance).isBetween(0.2, 0.99);
    assertThat(live.best().orElseThrow().aim().chance()).isCloseTo(chance, within(0.03));
    assertThat(live.window().area())
        .isCloseTo(full.window().area(), within(0.06 * full.window().area()));
    Closer closer = full.closer().orElseThrow();
    assertThat(closer.aim().chance().low()).isLessThanOrEqualTo(chance);
    assertThat(closer.aim().chance().high()).isGreaterThanOrEqualTo(chance);
    assertThat(closer.forgives().area().central()).isEqualTo(full.window().area());
    assertThat(closer.forgives().area().low()).isLessThan(0.99 * full.window().area());
    assertThat(closer.opponent().seconds().isKnown()).isTrue();
    assertThat(closer.steadier().inAll()).isGreaterThan(chance);
  }

  /** Soft shots are not lobbed into the kitchen: they stay below the height of the bounce test. */
  @ParameterizedTest
  @EnumSource(names = {"DROP_STRAIGHT", "DROP_CROSS", "RESET", "DINK_STRAIGHT", "DINK_CROSS"})
  void softShot_asAimed_isNotLofted(UsualShot shot) {
    BestShot best = full(shot).best().orElseThrow();
    assertThat(best.path()).allMatch(point -> point.height() <= BOUNCE_TEST_M + 1e-6);
    assertThat(best.aim().clearance()).isBetween(0.0, 0.7);
  }

  /** Where the balls of a player land, against 20,000 simulated ones: eight in ten in the ring. */
  @Test
  void landings_simulated_lieInTheRingEightTimesInTen() {
    ShotSetting setting = UsualShot.DROP_CROSS.usual();
    BestShot best = full(UsualShot.DROP_CROSS).best().orElseThrow();
    LaunchAim aim = best.aim().aim();
    Scatter scatter = setting.scatter();
    FlightSolver solver = FlightSolver.of(setting.day().conditions());
    SplittableRandom random = new SplittableRandom(17);
    int within = 0;
    int balls = 20_000;
    for (int i = 0; i < balls; i++) {
      LaunchAim launch =
          new LaunchAim(
              aim.speed() * (1 + scatter.speed() * random.nextGaussian()),
              aim.elevation() + scatter.elevation() * random.nextGaussian(),
              aim.bearing() + scatter.bearing() * random.nextGaussian());
      Vector at = solver.fly(Launch.of(setting.contact(), launch, 0)).landing().ball().position();
      within += isInside(best, at) ? 1 : 0;
    }
    assertThat((double) within / balls).isCloseTo(0.8, within(0.02));
  }

  private static boolean isInside(BestShot best, Vector at) {
    LandingSpread ring = best.scatter();
    double x = at.x() - best.aim().landing().x();
    double y = at.y() - best.aim().landing().y();
    double along = x * Math.cos(ring.turn()) + y * Math.sin(ring.turn());
    double across = y * Math.cos(ring.turn()) - x * Math.sin(ring.turn());
    return Math.hypot(along / ring.longHalf(), across / ring.shortHalf()) < 1;
  }

  /** Wind into the face: more pace; blown from the right: aim to the right of it. */
  @Test
  void wind_inTheFaceAndFromTheSide_isAimedAgainst() {
    ShotSetting calm = UsualShot.DROP_STRAIGHT.usual();
    BestShot still = full(UsualShot.DROP_STRAIGHT).best().orElseThrow();
    BestShot against =
        ShotStudy.full(calm.on(calm.day().withWind(10 * MPH, 0))).best().orElseThrow();
    assertThat(against.aim().aim().speed()).isGreaterThan(still.aim().aim().speed() + 1);
    BestShot fromRight =
        ShotStudy.full(calm.on(calm.day().withWind(10 * MPH, 90))).best().orElseThrow();
    assertThat(fromRight.aim().aim().bearing()).isLessThan(still.aim().aim().bearing() - 0.02);
  }

  @Test
  void band_holdsTheBestAim() {
    ShotAnswer answer = full(UsualShot.RESET);
    ShotAnswer.NetBand band = answer.band().orElseThrow();
    assertThat(answer.best().orElseThrow().aim().clearance()).isBetween(band.low(), band.high());
    assertThat(band.high()).isLessThan(BOUNCE_TEST_M);
  }

  /** Straight is the shorter way over the higher net, by the court's geometry. */
  @Test
  void lines_ofADink_crossCourtHasMoreRoom() {
    LineTable table = LineTable.of(UsualShot.DINK_STRAIGHT, ShotSetting.Day.CALM, 3.5);
    assertThat(table.straight().line().distance()).isCloseTo(11 * 0.3048, within(1e-9));
    assertThat(table.cross().line().distance())
        .isCloseTo(Math.hypot(11, 10) * 0.3048, within(1e-9));
    assertThat(table.cross().line().netHeight()).isLessThan(table.straight().line().netHeight());
    assertThat(table.cross().line().window().area())
        .isGreaterThan(table.straight().line().window().area() * 1.1);
  }

  /** A ball that drags more asks for more pace; the way and the net do not ask which ball it is. */
  @Test
  void lines_haveARangeWhereBallsMatter() {
    LineTable.Line line = LineTable.of(UsualShot.RESET, ShotSetting.Day.CALM, 3.5).straight();
    LineTable.Way way = line.way().orElseThrow();
    assertThat(way.forgives().area().central()).isEqualTo(line.line().window().area());
    for (Ranged number :
        List.of(
            way.aim().chance(),
            way.aim().pace(),
            way.aim().clearance(),
            way.forgives().pace(),
            way.forgives().area())) {
      assertThat(number.low()).isLessThan(number.central());
      assertThat(number.high()).isGreaterThan(number.central());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "9.6, 10.2, 11.4, 10 mph (10 to 11 mph)",
    "9.9, 10.2, 10.4, 10 mph",
    "NaN, 10.2, NaN, 10 mph"
  })
  void range_isSaidInBrackets(double low, double central, double high, String words) {
    assertThat(
            RangeWords.with(new Ranged(low, central, high), number -> Math.round(number) + " mph"))
        .isEqualTo(words);
    assertThat(RangeWords.range(new Ranged(1, 2, 3), feet -> Math.round(feet) + " ft 2 in"))
        .isEqualTo("1 ft 2 in to 3 ft 2 in");
  }

  /** The box of tape lies in the target and takes half of the balls that count. */
  @ParameterizedTest
  @EnumSource
  void card_hasItsTapeInTheTarget_andHalfOfWhatCountsInTheTape(UsualShot shot) {
    ShotAnswer answer = full(shot);
    TargetCard card = TargetCard.of(answer).orElseThrow();
    Area target = shot.usual().target();
    assertThat(card.tape().left()).isGreaterThanOrEqualTo(target.left() - 1e-9);
    assertThat(card.tape().right()).isLessThanOrEqualTo(target.right() + 1e-9);
    assertThat(card.tape().near()).isGreaterThanOrEqualTo(target.near() - 1e-9);
    assertThat(card.tape().far()).isLessThanOrEqualTo(target.far() + 1e-9);
    double chance = answer.best().orElseThrow().aim().chance();
    assertThat(card.inTape()).isCloseTo(chance / 2, within(0.02));
  }

  @Test
  void setting_outsideTheLines_isRefused() {
    ShotSetting usual = UsualShot.LOB.usual();
    assertThatThrownBy(
            () ->
                new ShotSetting(
                    usual.shot(),
                    usual.hitter(),
                    new Area(new Place(9, 3), 1, 1),
                    usual.opponent(),
                    usual.day(),
                    usual.player()))
        .hasMessageContaining("outside the lines")
        .hasMessageContaining("Maybe");
    assertThatThrownBy(() -> usual.at(Double.NaN)).hasMessageContaining("Maybe 3.5");
  }

  /** Words for chances and places. */
  @ParameterizedTest
  @CsvSource({
    "0.81, 8 times in 10",
    "0.31, 3 times in 10",
    "0.97, nearly always (97 times in 100)",
    "0.999, nearly always (99 times in 100)",
    "0.11, once in 10 (11 in 100)",
    "0.03, hardly ever (3 in 100)",
    "0.001, hardly ever (not once in 100)"
  })
  void chance_isSaidInTens(double chance, String words) {
    assertThat(ShotWords.timesInTen(chance)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({
    "0, into the hitter’s face",
    "90, from the right",
    "180, from behind",
    "270, from the left",
    "350, into the hitter’s face"
  })
  void wind_isSaidAsTheHitterFeelsIt(double degrees, String words) {
    assertThat(ShotWords.windFrom(degrees)).isEqualTo(words);
  }
}
