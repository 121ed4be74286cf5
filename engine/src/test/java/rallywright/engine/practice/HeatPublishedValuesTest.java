package rallywright.engine.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.quantity.Speed;
import rallywright.engine.quantity.Temperature;

/** Source and tolerance of each table stand in its first lines. */
class HeatPublishedValuesTest {

  private static final int FIRST_HUMIDITY = 40;
  private static final int HUMIDITY_STEP = 5;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/nws-heat-index/chart.csv", numLinesToSkip = 4)
  void regression_withoutAdjustments_isThePrintedChart(ArgumentsAccessor row) {
    double fahrenheit = row.getDouble(0);
    for (int column = 1; column < row.size(); column++) {
      if (row.getString(column) != null) {
        double humidity = FIRST_HUMIDITY + HUMIDITY_STEP * (column - 1.0);
        assertThat(HeatIndex.regression(fahrenheit, humidity))
            .as("%s °F, %s %%", fahrenheit, humidity)
            .isCloseTo(row.getDouble(column), within(0.51));
      }
    }
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/nws-heat-index/adjusted.csv",
      useHeadersInDisplayName = true)
  void heatIndex_withAdjustments_isAsComputed(
      double fahrenheit, double humidity, double expected, double tolerance) {
    HeatIndex index = HeatIndex.of(Temperature.fahrenheit(fahrenheit), humidity);
    assertThat(index.fahrenheit()).isCloseTo(expected, within(tolerance));
    assertThat(index.celsius()).isCloseTo((expected - 32) / 1.8, within(tolerance));
  }

  // The chart's limits (srh.noaa.gov/tsa/?n=heatindex): 80, 90, 105, 130 °F.
  @ParameterizedTest
  @CsvSource({
    "79.99, below caution",
    "80, caution",
    "89.99, caution",
    "90, extreme caution",
    "104.99, extreme caution",
    "105, danger",
    "129.99, danger",
    "130, extreme danger"
  })
  void category_atTheLimits_isThatOfTheChart(double fahrenheit, String words) {
    assertThat(new HeatIndex(fahrenheit).category().words()).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/beaufort/limits.csv", useHeadersInDisplayName = true)
  void windForce_atTheLimits_isThatOfTheScale(
      int force, String name, double fromMps, double toMps, double fromMph) {
    assertThat(WindForce.of(Speed.metresPerSecond(fromMps)).number()).isEqualTo(force);
    assertThat(WindForce.of(Speed.metresPerSecond(toMps)).number()).isEqualTo(force);
    // The limits in mph are printed as whole numbers: half of one is their rounding.
    assertThat(WindForce.of(Speed.mph(fromMph + 0.5)).words()).isEqualTo(name);
  }
}
