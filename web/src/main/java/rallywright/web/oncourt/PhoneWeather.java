package rallywright.web.oncourt;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rallywright.engine.practice.HeatCategory;
import rallywright.engine.practice.HeatIndex;
import rallywright.web.weather.ExpectedWeather;

/** What a phone needs to know of weather: what is expected, and the categories of heat. */
final class PhoneWeather {

  private PhoneWeather() {}

  /** As an object that becomes JSON. */
  static Map<String, Object> of(ExpectedWeather expected) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("celsius", orNull(expected.celsius()));
    out.put("humidityPercent", orNull(expected.humidityPercent()));
    out.put("heat", Arrays.stream(HeatCategory.values()).map(PhoneWeather::category).toList());
    out.put("always", HeatCategory.ALWAYS);
    out.put("edition", "By the " + HeatIndex.EDITION + "; " + HeatCategory.EDITION + ".");
    return out;
  }

  private static List<Object> category(HeatCategory category) {
    return List.of(Math.max(category.fromFahrenheit(), -1000), category.words(), category.advice());
  }

  private static @Nullable Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }
}
