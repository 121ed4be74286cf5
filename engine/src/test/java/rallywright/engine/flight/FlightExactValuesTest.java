package rallywright.engine.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.quantity.Source;

/** Flights whose exact solution is known, and derived values of an independent integrator. */
class FlightExactValuesTest {

  private static final double G = Conditions.GRAVITY;

  /** A ball of 1 kg with ½ρAC_D/m = k; its radius is next to nothing. */
  private static FlightSolver solver(double k) {
    double radius = 1e-12;
    double drag = 2 * k / (Math.PI * radius * radius);
    Ball ball = new Ball(1, radius, new Ball.Aero(drag, 0, 0, 0), Bounce.USUAL, Source.ASSUMPTION);
    return FlightSolver.of(new Conditions(ball, new Air(1), Wind.NONE));
  }

  private static Launch launch(double speed, double degrees, double height) {
    return Launch.of(new Vector(0, 0, height), LaunchAim.degrees(speed, degrees, 0), 0);
  }

  /** 12 m/s at 20° from 0.9 m: textbook parabola, g 9.80665. */
  @Test
  void vacuum_flies_theParabola() {
    Flight flight = solver(0).fly(launch(12, 20, 0.9));
    assertThat(flight.landing().seconds()).isCloseTo(1.017435804, within(1e-9));
    assertThat(flight.landing().ball().position().x()).isCloseTo(11.47292301, within(1e-8));
    Passage apex = Objects.requireNonNull(flight.apex());
    assertThat(apex.ball().position().z()).isCloseTo(1.758845788, within(1e-9));
    assertThat(apex.seconds()).isCloseTo(0.418516182, within(1e-9));
  }

  /** Thrown straight up at the terminal speed 14 m/s: vt²/2g·ln 2, vt/g·π/4, return at vt/√2. */
  @Test
  void upAndDown_withDrag_hasTheClosedForm() {
    double k = G / (14 * 14);
    Flight flight =
        solver(k).fly(new Launch(new Vector(0, 0, 1e-11), new Vector(0, 0, 14), Vector.ZERO));
    Passage apex = Objects.requireNonNull(flight.apex());
    assertThat(apex.ball().position().z()).isCloseTo(6.926771496, within(1e-8));
    assertThat(apex.seconds()).isCloseTo(1.121236537, within(1e-8));
    assertThat(flight.landing().seconds()).isCloseTo(1.121236537 + 1.258251311, within(2e-8));
    assertThat(flight.landing().speed()).isCloseTo(14 / Math.sqrt(2), within(1e-8));
  }

  /** Dropped from 2 m with vt = 14: v = vt √(1 - e^(-2gh/vt²)). */
  @Test
  void drop_withDrag_hasTheClosedForm() {
    Flight flight = solver(G / 196).fly(new Launch(new Vector(0, 0, 2), Vector.ZERO, Vector.ZERO));
    assertThat(flight.landing().speed()).isCloseTo(5.962428126, within(1e-8));
    assertThat(flight.landing().seconds()).isCloseTo(0.649362848, within(1e-8));
  }

  /** Derived values of a fourth-order integrator with steps of 1e-4 s. */
  @ParameterizedTest
  @CsvSource({
    "0.0355, 20, 5, 1.0, 0.673183, 10.96160, 1.14333",
    "0.0355, 12, 20, 0.9, 0.991127, 9.37363, 1.67350",
    "0.0355, 25, 2, 1.0, 0.571446, 11.54406, NaN",
    "0.05, 20, 5, 1.0, 0.675744, 10.28331, NaN",
    "0.05, 12, 20, 0.9, 0.981579, 8.75990, NaN"
  })
  void drag_flies_asTheDerivedTable(ArgumentsAccessor row) {
    Flight flight =
        solver(row.getDouble(0)).fly(launch(row.getDouble(1), row.getDouble(2), row.getDouble(3)));
    assertThat(flight.landing().seconds()).isCloseTo(row.getDouble(4), within(1e-6));
    assertThat(flight.landing().ball().position().x()).isCloseTo(row.getDouble(5), within(1e-5));
    if (!Double.isNaN(row.getDouble(6))) {
      Passage apex = Objects.requireNonNull(flight.apex());
      assertThat(apex.ball().position().z()).isCloseTo(row.getDouble(6), within(1e-5));
    }
  }

  /** With spin but no drag lift does no work: speed and height keep their energy. */
  @Test
  void lift_withoutDrag_keepsTheEnergy() {
    Ball ball =
        new Ball(0.0243, 0.0371, new Ball.Aero(0, 0, 0.4, 0), Bounce.USUAL, Source.ASSUMPTION);
    FlightSolver solver = FlightSolver.of(new Conditions(ball, new Air(1.2), Wind.NONE));
    Launch start =
        new Launch(new Vector(-6, 1, 0.8), new Vector(14, -1, 3), new Vector(20, 150, -60));
    Passage landing = solver.fly(start).landing();
    double energy = 14 * 14 + 1 + 9 + 2 * G * 0.8;
    double then = landing.speed() * landing.speed() + 2 * G * 0.0371;
    assertThat(then).isCloseTo(energy, within(1e-7));
  }

  /** Order of convergence: tolerance down by 2^5·... must bring the error down by as much. */
  @Test
  void landing_withSmallerTolerance_comesCloserInProportion() {
    Launch start =
        new Launch(new Vector(-6, 1, 0.8), new Vector(14, -1, 3), new Vector(20, 150, -60));
    double exact = landingX(start, 1e-13);
    double coarse = Math.abs(landingX(start, 1e-5) - exact);
    double fine = Math.abs(landingX(start, 1e-8) - exact);
    assertThat(coarse).isBetween(1e-8, 1e-3);
    assertThat(fine).isLessThan(coarse / 100);
  }

  private static double landingX(Launch start, double tolerance) {
    return FlightSolver.of(Conditions.CALM)
        .withTolerance(tolerance)
        .fly(start)
        .landing()
        .ball()
        .position()
        .x();
  }

  /** Air of the standard tables; moist air by Tetens' formula. */
  @ParameterizedTest
  @CsvSource({
    "15, 0, 1.2250",
    "0, 0, 1.2923",
    "20, 0, 1.2041",
    "30, 0, 1.1644",
    "35, 0, 1.1455",
    "20, 50, 1.1989",
    "30, 50, 1.1552",
    "35, 100, 1.1215"
  })
  void air_atSeaLevel_hasTheDensityOfTheTables(double celsius, double humidity, double density) {
    assertThat(Air.of(celsius, humidity, Air.SEA_LEVEL_PA).density())
        .isCloseTo(density, within(6e-5));
  }

  /** International Standard Atmosphere. */
  @ParameterizedTest
  @CsvSource({"500, 1.1673", "1000, 1.1116", "1609.344, 1.0466", "2000, 1.0065"})
  void air_inTheMountains_hasTheDensityOfTheStandardAtmosphere(double metres, double density) {
    Air air = Air.of(Air.standardCelsiusAt(metres), 0, Air.pressureAt(metres));
    assertThat(air.density()).isCloseTo(density, within(6e-5));
  }
}
