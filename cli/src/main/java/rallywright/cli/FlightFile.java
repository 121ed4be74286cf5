package rallywright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rallywright.engine.flight.Air;
import rallywright.engine.flight.Ball.Aero;
import rallywright.engine.flight.BallSpread;
import rallywright.engine.flight.Bounce;
import rallywright.engine.flight.Conditions;
import rallywright.engine.flight.Flight;
import rallywright.engine.flight.FlightSolver;
import rallywright.engine.flight.Launch;
import rallywright.engine.flight.Vector;
import rallywright.engine.flight.Wind;
import rallywright.engine.quantity.Source;

/** Balls to fly as a JSON file. */
final class FlightFile {

  /** Bounds that no ball game reaches; they catch wrong units. */
  private static final double FARTHEST_M = 1000;

  private static final double FASTEST_MPS = 300;
  private static final double STRONGEST_WIND_MPS = 100;
  private static final double FASTEST_SPIN_RADPS = 10_000;
  private static final double SMALLEST = 1e-6;

  /**
   * How much drag and lift differ where the file does not say: in proportion the outdoor ball's.
   */
  private static final double DRAG_SHARE;

  private static final double LIFT_SHARE;

  static {
    Aero outdoor = rallywright.engine.flight.Ball.OUTDOOR.aero();
    DRAG_SHARE = outdoor.dragSd() / outdoor.drag();
    LIFT_SHARE = outdoor.liftSlopeSd() / outdoor.liftSlope();
  }

  private FlightFile() {}

  /** One ball: its name, where it stands in the file, its conditions and its launch. */
  record Ball(String name, JsonField place, Conditions conditions, Launch launch) {

    /** The flight, and those of the balls that stand for the spread of drag and lift. */
    BallSpread<Flight> fly() {
      try {
        return BallSpread.of(
            conditions,
            !launch.spin().equals(Vector.ZERO),
            each -> FlightSolver.of(each).fly(launch));
      } catch (IllegalArgumentException refusal) {
        throw place.refused(refusal);
      }
    }
  }

  static List<Ball> read(JsonField root) {
    List<Ball> balls = new ArrayList<>();
    for (JsonField one : root.field("cases").elements()) {
      balls.add(ball(one, "ball " + (balls.size() + 1)));
    }
    return balls;
  }

  private static Ball ball(JsonField one, String unnamed) {
    String name = one.optional("name").map(JsonField::text).orElse(unnamed);
    Aero aero = aero(one);
    rallywright.engine.flight.Ball ball =
        new rallywright.engine.flight.Ball(
            one.field("mass_kg").number(SMALLEST, FARTHEST_M),
            one.field("radius_m").number(SMALLEST, 1),
            aero,
            Bounce.USUAL,
            new Source("the file"));
    Wind wind =
        new Wind(vectorOrNone(one.optional("wind_mps"), STRONGEST_WIND_MPS), Wind.Profile.CONSTANT);
    Air air = new Air(one.field("airDensity_kgm3").number(0, 9));
    Launch launch =
        new Launch(
            vector(one.field("position_m"), FARTHEST_M),
            vector(one.field("velocity_mps"), FASTEST_MPS),
            vectorOrNone(one.optional("spin_radps"), FASTEST_SPIN_RADPS));
    return new Ball(name, one, new Conditions(ball, air, wind), launch);
  }

  private static Aero aero(JsonField one) {
    double drag = one.field("dragCoefficient").number(0, 100);
    double lift = one.field("liftSlope").number(0, 100);
    return new Aero(
        drag,
        sd(one, "dragSd", DRAG_SHARE * drag),
        lift,
        sd(one, "liftSlopeSd", LIFT_SHARE * lift));
  }

  private static double sd(JsonField one, String name, double usual) {
    return one.optional(name).map(field -> field.number(0, 100)).orElse(usual);
  }

  private static Vector vectorOrNone(Optional<JsonField> field, double largest) {
    return field.map(found -> vector(found, largest)).orElse(Vector.ZERO);
  }

  private static Vector vector(JsonField field, double largest) {
    List<JsonField> three = field.elements(3);
    return new Vector(
        three.get(0).number(-largest, largest),
        three.get(1).number(-largest, largest),
        three.get(2).number(-largest, largest));
  }
}
