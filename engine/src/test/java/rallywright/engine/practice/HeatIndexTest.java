package rallywright.engine.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rallywright.engine.quantity.Speed;
import rallywright.engine.quantity.Temperature;

class HeatIndexTest {

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -0.1, 100.1})
  void humidity_outsideOfItsRange_isRefusedWithAWayOut(double percent) {
    assertThatThrownBy(() -> HeatIndex.of(Temperature.celsius(30), percent))
        .hasMessageContaining("must lie from 0 to 100 %")
        .hasMessageContaining("Maybe 70.");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -40.1, 60.1})
  void temperature_thatNoWeatherBrings_isRefused(double celsius) {
    assertThatThrownBy(() -> Temperature.celsius(celsius)).hasMessageContaining("°F");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1})
  void speed_belowNothing_isRefused(double metresPerSecond) {
    assertThatThrownBy(() -> Speed.metresPerSecond(metresPerSecond)).hasMessageContaining("0 or");
  }

  @Test
  void coldAir_feelsAsItIs() {
    assertThat(HeatIndex.of(Temperature.celsius(-10), 90).celsius()).isCloseTo(-10, within(1e-9));
  }

  @Test
  void hotterOrMoreHumidAir_neverFeelsCooler_whereTheChartIsPrinted() {
    for (double fahrenheit = 80; fahrenheit < 110; fahrenheit++) {
      for (double humidity = 40; humidity < 85; humidity++) {
        double here = HeatIndex.of(Temperature.fahrenheit(fahrenheit), humidity).fahrenheit();
        assertThat(HeatIndex.of(Temperature.fahrenheit(fahrenheit + 1), humidity).fahrenheit())
            .isGreaterThan(here);
        assertThat(HeatIndex.of(Temperature.fahrenheit(fahrenheit), humidity + 1).fahrenheit())
            .isGreaterThan(here - 0.15);
      }
    }
  }

  @Test
  void advice_getsStricterFromCategoryToCategory_andAlwaysDefersToThePlace() {
    assertThat(HeatCategory.EXTREME_DANGER.advice()).contains("Do not play");
    assertThat(HeatCategory.DANGER.advice()).contains("Better not");
    assertThat(HeatCategory.ALWAYS).contains("licensed practice", "medical help");
  }
}
