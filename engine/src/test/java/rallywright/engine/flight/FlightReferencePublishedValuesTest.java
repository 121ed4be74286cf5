package rallywright.engine.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.quantity.Source;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Six flights computed with SciPy 1.17.1, solve_ivp, method DOP853, rtol = atol = 1e-13: another
 * program, another method, of order 8.
 */
class FlightReferencePublishedValuesTest {

  private static final double AGREEMENT = 1e-6;

  static List<JsonNode> cases() throws Exception {
    try (InputStream in =
        FlightReferencePublishedValuesTest.class.getResourceAsStream(
            "/published/flight/reference.json")) {
      List<JsonNode> cases = new ArrayList<>();
      new JsonMapper().readTree(in).get("cases").forEach(cases::add);
      return cases;
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void flight_agreesWithAnIndependentIntegrator(JsonNode row) {
    Ball ball =
        new Ball(
            row.get("mass_kg").asDouble(),
            row.get("radius_m").asDouble(),
            new Ball.Aero(
                row.get("dragCoefficient").asDouble(), 0, row.get("liftSlope").asDouble(), 0),
            Bounce.USUAL,
            Source.ASSUMPTION);
    Conditions conditions =
        new Conditions(
            ball,
            new Air(row.get("airDensity_kgm3").asDouble()),
            new Wind(vector(row.get("wind_mps")), Wind.Profile.CONSTANT));
    Flight flight =
        FlightSolver.of(conditions)
            .fly(
                new Launch(
                    vector(row.get("position_m")),
                    vector(row.get("velocity_mps")),
                    vector(row.get("spin_radps"))));
    JsonNode expected = row.get("expected");
    Passage landing = flight.landing();
    close(landing.seconds(), expected.get("landTime_s"));
    close(landing.ball().position().x(), expected.get("landX_m"));
    close(landing.ball().position().y(), expected.get("landY_m"));
    close(landing.speed(), expected.get("landSpeed_mps"));
    if (expected.get("netTime_s").isNull()) {
      assertThat(flight.net()).isNull();
    } else {
      Passage net = Objects.requireNonNull(flight.net());
      close(net.seconds(), expected.get("netTime_s"));
      close(net.ball().position().y(), expected.get("netY_m"));
      close(net.ball().position().z(), expected.get("netZ_m"));
    }
  }

  private static void close(double actual, JsonNode expected) {
    assertThat(actual).isCloseTo(expected.asDouble(), within(AGREEMENT));
  }

  private static Vector vector(JsonNode three) {
    return new Vector(three.get(0).asDouble(), three.get(1).asDouble(), three.get(2).asDouble());
  }
}
