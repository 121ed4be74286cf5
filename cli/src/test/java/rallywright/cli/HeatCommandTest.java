package rallywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class HeatCommandTest {

  private static String run(String flags) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine command = Rallywright.commandLine();
    command.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    assertThat(command.execute(("heat " + flags).split(" ", -1))).as(err.toString()).isZero();
    return out.toString();
  }

  private static JsonNode json(String flags) {
    return JsonMapper.builder().build().readTree(run(flags + " --json"));
  }

  // NWS SR 90-23 with adjustments, computed from the service's equation: 90 °F, 70 % is 105.9220;
  // the chart's 105 to 129 is "danger". 96 °F, 65 %: 121.0316. 70 °F, 50 %: 69.05.
  @ParameterizedTest
  @CsvSource({
    "90F, 70, 105.9220, danger",
    "96f, 65 , 121.0316, danger",
    "70F, 50, 69.05, below caution",
    "90F, 10%, 85.2790, caution",
    "90F, 50, 94.5969, extreme caution"
  })
  void json_hasTheIndexInBothUnits_andTheCategory(
      String temperature, String humidity, double fahrenheit, String category) {
    JsonNode answer = json("--temperature " + temperature + " --humidity " + humidity);
    assertThat(answer.at("/heatIndexF").asDouble()).isCloseTo(fahrenheit, within(0.005));
    assertThat(answer.at("/heatIndexC").asDouble())
        .isCloseTo((fahrenheit - 32) / 1.8, within(0.005));
    assertThat(answer.at("/category").asString()).isEqualTo(category);
    assertThat(answer.at("/advice").asString()).isNotBlank();
    assertThat(answer.at("/edition").asString()).contains("SR 90-23", "80, 90, 105 and 130 °F");
  }

  @Test
  void celsius_isTheSameAirAsItsFahrenheit() {
    double fromCelsius = json("--temperature 35C --humidity 60").at("/heatIndexF").asDouble();
    double fromFahrenheit = json("--temperature 95F --humidity 60").at("/heatIndexF").asDouble();
    assertThat(fromCelsius).isEqualTo(fromFahrenheit);
  }

  @Test
  void lines_forPeople_sayWhatItFeelsLike_whatToDo_andWhoseChartItIs() {
    assertThat(run("--temperature 32C --humidity 70"))
        .contains("Feels like 105 °F (40 °C) in the shade: extreme caution.")
        .contains("licensed practice")
        .contains("National Weather Service");
  }
}
