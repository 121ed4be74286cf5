package rallywright.web.weather;

import java.util.OptionalDouble;

/**
 * What a forecast says for a session; everything may be missing.
 *
 * @param celsius the air temperature in °C
 * @param humidityPercent the relative humidity in percent
 * @param windMetresPerSecond the mean wind in m/s
 */
public record ExpectedWeather(
    OptionalDouble celsius, OptionalDouble humidityPercent, OptionalDouble windMetresPerSecond) {

  /** Nothing is known. */
  public static final ExpectedWeather UNKNOWN =
      new ExpectedWeather(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

  /** Whether nothing is known. */
  public boolean isUnknown() {
    return equals(UNKNOWN);
  }

  /** The text that is stored: three numbers with a semicolon between, empty where unknown. */
  String written() {
    return part(celsius) + ";" + part(humidityPercent) + ";" + part(windMetresPerSecond);
  }

  /** What a stored text says; unknown where it cannot be read. */
  static ExpectedWeather read(String text) {
    String[] parts = text.split(";", -1);
    if (parts.length != 3) {
      return UNKNOWN;
    }
    try {
      return new ExpectedWeather(number(parts[0]), number(parts[1]), number(parts[2]));
    } catch (NumberFormatException damaged) {
      return UNKNOWN;
    }
  }

  private static String part(OptionalDouble value) {
    return value.isPresent() ? String.valueOf(value.getAsDouble()) : "";
  }

  private static OptionalDouble number(String part) {
    return part.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(part));
  }
}
