package rallywright.engine.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.quantity.Source;

/** Bounce, hands battle and wind against what the rule book and publications say. */
class FlightPublishedValuesTest {

  private static final double MPH = 0.44704;
  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;

  private static Conditions of(double massKg, double diameterM, double drag, double density) {
    Ball ball =
        new Ball(
            massKg,
            diameterM / 2,
            new Ball.Aero(drag, 0, 0.195, 0),
            Bounce.USUAL,
            Source.ASSUMPTION);
    return new Conditions(ball, new Air(density), Wind.NONE);
  }

  /** Rule book: dropped from 78 in a ball bounces 30 to 34 in, to its top. */
  @ParameterizedTest
  @CsvSource({"0.33", "0.45"})
  void bounce_from78Inches_isThatOfTheRuleBook(double drag) {
    Conditions conditions = of(0.0243, 2.92 * INCH, drag, 1.2);
    double radius = conditions.ball().radiusM();
    FlightSolver solver = FlightSolver.of(conditions);
    Launch drop = new Launch(new Vector(1, 0, 78 * INCH + radius), Vector.ZERO, Vector.ZERO);
    Launch up = conditions.ball().bounce().after(solver.fly(drop).landing().ball(), radius);
    Passage top = solver.fly(up).apex();
    assertThat(top).isNotNull();
    double topInches = (top == null ? 0 : top.ball().position().z() + radius) / INCH;
    assertThat(topInches).isBetween(30.0, 34.0);
  }

  /**
   * A hands battle (technicalpickleball.net/firefight): 35 mph off the paddle, 28 mph after 16 ft,
   * 0.33 to 0.35 s. The drag coefficients are those derived from it for two balls.
   */
  @ParameterizedTest
  @CsvSource({"0.0243, 0.0742, 1.21, 0.425", "0.026, 0.074, 1.21, 0.457"})
  void handsBattle_from35To28Mph_tellsTheDrag(ArgumentsAccessor row) {
    Conditions conditions = of(row.getDouble(0), row.getDouble(1), 0.33, row.getDouble(2));
    double drag = StraightFlight.drag(conditions, 35 * MPH, 28 * MPH, 16 * FOOT);
    assertThat(drag).isCloseTo(row.getDouble(3), within(0.001));
    StraightFlight flight =
        StraightFlight.in(of(row.getDouble(0), row.getDouble(1), drag, row.getDouble(2)));
    assertThat(flight.arrival(35 * MPH, 16 * FOOT)).isCloseTo(28 * MPH, within(1e-9));
    assertThat(flight.seconds(35 * MPH, 16 * FOOT)).isBetween(0.33, 0.355);
  }

  @Test
  void handsBattle_withTheMeasuredDrag_arrivesAt29Mph() {
    StraightFlight flight = StraightFlight.in(of(0.0243, 0.0742, 0.33, 1.21));
    assertThat(flight.dragPerMetre()).isCloseTo(0.03553, within(5e-6));
    assertThat(flight.arrival(35 * MPH, 16 * FOOT) / MPH).isCloseTo(29.4, within(0.05));
  }

  /** Derived from the closed form with k 0.03553 per metre. */
  @ParameterizedTest
  @CsvSource({"30, 0.344, 0.397", "40, 0.258, 0.298", "50, 0.206, 0.238", "60, 0.172, 0.199"})
  void straightFlight_over14And16Feet_takesTheDerivedTime(double mph, double at14, double at16) {
    StraightFlight flight = new StraightFlight(0.03553);
    assertThat(flight.seconds(mph * MPH, 14 * FOOT)).isCloseTo(at14, within(6e-4));
    assertThat(flight.seconds(mph * MPH, 16 * FOOT)).isCloseTo(at16, within(6e-4));
    assertThat(flight.paceFor(flight.seconds(mph * MPH, 16 * FOOT), 16 * FOOT))
        .isCloseTo(mph * MPH, within(1e-9));
  }

  /** Without gravity's share the solver's level flight is the closed form. */
  @Test
  void straightFlight_besideTheSolver_isAsFastOverAFewMetres() {
    Conditions conditions = Conditions.CALM;
    Launch hard = Launch.of(new Vector(-2, 0, 1.2), LaunchAim.degrees(22, 2, 0), 0);
    Passage net = FlightSolver.of(conditions).fly(hard).net();
    assertThat(net).isNotNull();
    double solved = net == null ? 0 : net.seconds();
    assertThat(StraightFlight.in(conditions).seconds(22, 2)).isCloseTo(solved, within(2e-4));
  }

  /**
   * Emond, Sun, Swartz 2024, arXiv:2409.19000 (abstract): hitting a drive against the wind is often
   * preferable. Here: the launches of a hard drive from the baseline that clear the net and land in
   * are more numerous against 15 mph than with it. Their ball: 24 g, 37 mm, C_D 0.6, density 1.2.
   */
  @Test
  void drive_againstTheWind_hasTheLargerWindow() {
    assertThat(drives(-15 * MPH)).isGreaterThan(1.2 * drives(0));
    assertThat(drives(0)).isGreaterThan(1.2 * drives(15 * MPH));
  }

  private static double drives(double wind) {
    Conditions still = of(0.024, 0.074, 0.6, 1.2);
    Shot shot =
        new Shot(
            new Vector(-6.7, 0, 0.8),
            0,
            Target.of(new Requirement.ClearsNet(0), Requirement.LandsIn.court()),
            new Conditions(still.ball(), still.air(), Wind.constant(wind, 0)));
    LaunchBox hard = new LaunchBox(18, 30, Math.toRadians(-5), Math.toRadians(20));
    return LaunchWindow.of(shot, 0, hard).area();
  }

  /** Rigid-body bounce of a thin shell without spin: gripping it keeps 3/5 of its level speed. */
  @ParameterizedTest
  @CsvSource({"15, 0.910", "20, 0.670", "30, 0.422", "45, 0.244"})
  void bounce_gripsFromTheDerivedFrictionOn(double degrees, double friction) {
    double angle = Math.toRadians(degrees);
    Launch landing =
        new Launch(
            new Vector(0, 0, 0.0371),
            new Vector(10 * Math.cos(angle), 0, -10 * Math.sin(angle)),
            Vector.ZERO);
    Launch gripped = new Bounce(0.64, friction + 0.001).after(landing, 0.0371);
    assertThat(gripped.velocity().x()).isCloseTo(0.6 * landing.velocity().x(), within(1e-9));
    Launch slid = new Bounce(0.64, friction - 0.001).after(landing, 0.0371);
    assertThat(slid.velocity().x()).isGreaterThan(0.6 * landing.velocity().x());
  }

  /** ITF Technical Booklet 2015: μ = (v_ix - v_fx)/(v_iy(1 + e)); 30 m/s at 16°, μ 0.6, e 0.81. */
  @Test
  void bounce_sliding_losesWhatTheCourtTestSays() {
    Launch landing =
        new Launch(new Vector(0, 0, 0.033), new Vector(28.8379, 0, -8.2691), Vector.ZERO);
    Launch after = new Bounce(0.81, 0.6).after(landing, 0.033);
    assertThat(after.velocity().x()).isCloseTo(19.8576, within(1e-4));
    assertThat(after.velocity().z()).isCloseTo(6.6980, within(1e-4));
  }
}
