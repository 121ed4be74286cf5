package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.practice.HeatIndex;
import rallywright.engine.quantity.Temperature;

/** The phone's heat index against the engine's, over all the air that is taken. */
class HeatTwinIT {

  private static final String GRID =
      """
      async () => {
        const heat = await import('/js/oncourt/heat.js');
        const found = [];
        for (let celsius = -40; celsius <= 60; celsius += 1) {
          for (let percent = 0; percent <= 100; percent += 4) {
            found.push(heat.heatIndex(celsius, percent));
          }
        }
        return found;
      }
      """;

  @Test
  void phone_overAllTheAir_feelsWhatTheEngineFeels(@TempDir Path data) {
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      Page page = browsers.phone().newPage();
      page.navigate(program.address() + "/court");
      List<?> found = (List<?>) page.evaluate(GRID);
      assertThat(found).hasSize(101 * 26);
      int place = 0;
      for (int celsius = -40; celsius <= 60; celsius++) {
        for (int percent = 0; percent <= 100; percent += 4) {
          double engine = HeatIndex.of(Temperature.celsius(celsius), percent).fahrenheit();
          assertThat(((Number) found.get(place)).doubleValue()).isCloseTo(engine, within(1e-9));
          place++;
        }
      }
    }
  }
}
