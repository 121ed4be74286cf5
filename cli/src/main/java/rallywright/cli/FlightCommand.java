package rallywright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rallywright.engine.flight.BallSpread;
import rallywright.engine.flight.Flight;
import rallywright.engine.flight.Passage;
import rallywright.engine.flight.Ranged;

/** Flies the balls of a file: where and when each crosses the net plane and lands. */
@Command(
    name = "flight",
    description = {
      "Flies the balls of a file: where and when each crosses the net plane and lands. With --aim:"
          + " where to aim a usual shot, and how often it comes off.",
      "SI units. x: toward the receiver, net plane at 0; y: to the hitter's left; z: up, floor at"
          + " 0. A position is that of the ball's centre; it lands one radius above the floor."
    },
    footerHeading = "%nFILE holds:%n",
    footer = {
      "  {\"cases\": [{\"name\": \"drop\", \"mass_kg\": 0.0243, \"radius_m\": 0.0371,",
      "    \"airDensity_kgm3\": 1.2, \"dragCoefficient\": 0.33, \"liftSlope\": 0.195,",
      "    \"wind_mps\": [-3, 0, 0], \"spin_radps\": [0, 60, 0],",
      "    \"position_m\": [-6.7, 0, 0.6], \"velocity_mps\": [11, 0.5, 5]}]}",
      "Balls of one sort differ: below each number stands the range of four balls in five. How",
      "much drag and lift differ may be said by dragSd and liftSlopeSd (standard deviations);",
      "left out, it is in proportion that of the outdoor ball: a quarter of the drag, two fifths",
      "of the lift.",
      "wind_mps and spin_radps may be left out. Topspin of a ball toward the receiver is above 0",
      "in the second number of spin_radps.",
      "",
      "Example: rallywright flight --aim drop-straight --level 3.5 --wind 10mph"
    },
    mixinStandardHelpOptions = true)
final class FlightCommand implements Callable<Integer> {

  @Parameters(arity = "0..1", paramLabel = "FILE", description = "JSON file with the balls to fly.")
  private @Nullable Path file;

  @Mixin private AimOptions aim = new AimOptions();

  @Option(names = "--json", description = "Print one JSON object, numbers unrounded.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  /**
   * What one ball does; the net's numbers are null where it lands before the net plane.
   *
   * @param fourInFive the lower and the upper end of each number over the spread of drag and lift;
   *     the net's are null where one of the balls that were tried lands before it
   */
  record Case(
      String name,
      double landTime_s,
      double landX_m,
      double landY_m,
      double landSpeed_mps,
      @Nullable Double netTime_s,
      @Nullable Double netY_m,
      @Nullable Double netZ_m,
      Ends fourInFive) {}

  /** The ends of ranges, the lower one first. */
  record Ends(
      List<Double> landTime_s,
      List<Double> landX_m,
      List<Double> landY_m,
      List<Double> landSpeed_mps,
      @Nullable List<Double> netTime_s,
      @Nullable List<Double> netY_m,
      @Nullable List<Double> netZ_m) {}

  /** The whole answer. */
  record Answer(List<Case> cases) {}

  @Override
  public Integer call() {
    if (aim.isAsked() == (file != null)) {
      throw new ParameterException(
          spec.commandLine(),
          "Either FILE with balls to fly or --aim with a usual shot must be given, not %s."
              .formatted(file == null ? "neither" : "both"));
    }
    if (file == null) {
      aim.print(spec.commandLine().getOut(), json);
      return 0;
    }
    return flyAll(file);
  }

  private int flyAll(Path balls) {
    List<Case> cases = FlightFile.read(JsonFile.root(balls)).stream().map(this::fly).toList();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonAnswer.print(out, new Answer(cases));
    } else {
      FlightTable.print(out, cases);
    }
    return 0;
  }

  private Case fly(FlightFile.Ball ball) {
    BallSpread<Flight> flights = ball.fly();
    Passage landing = flights.central().landing();
    @Nullable Passage net = flights.central().net();
    return new Case(
        ball.name(),
        landing.seconds(),
        landing.ball().position().x(),
        landing.ball().position().y(),
        landing.speed(),
        net == null ? null : net.seconds(),
        net == null ? null : net.ball().position().y(),
        net == null ? null : net.ball().position().z(),
        new Ends(
            atLanding(flights, Passage::seconds),
            atLanding(flights, passage -> passage.ball().position().x()),
            atLanding(flights, passage -> passage.ball().position().y()),
            atLanding(flights, Passage::speed),
            atNet(flights, Passage::seconds),
            atNet(flights, passage -> passage.ball().position().y()),
            atNet(flights, passage -> passage.ball().position().z())));
  }

  private static List<Double> atLanding(
      BallSpread<Flight> flights, ToDoubleFunction<Passage> number) {
    Ranged range = flights.range(flight -> number.applyAsDouble(flight.landing()));
    return List.of(range.low(), range.high());
  }

  private static @Nullable List<Double> atNet(
      BallSpread<Flight> flights, ToDoubleFunction<Passage> number) {
    Ranged range =
        flights.range(
            flight -> {
              @Nullable Passage net = flight.net();
              return net == null ? Double.NaN : number.applyAsDouble(net);
            });
    return range.isKnown() ? List.of(range.low(), range.high()) : null;
  }
}
