package rallywright.web.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rallywright.engine.practice.HeatCategory;
import rallywright.engine.practice.HeatIndex;
import rallywright.engine.practice.WindForce;
import rallywright.engine.quantity.Speed;
import rallywright.engine.quantity.Temperature;
import rallywright.engine.session.Conditions;
import rallywright.web.page.Units;

/**
 * Weather with its caution.
 *
 * @param seen what the weather is, one sentence; empty where nothing is known
 * @param advice what follows from it, a sentence each
 * @param edition whose categories these are; empty where none was used
 * @param tone how it is said
 */
public record WeatherWords(String seen, List<String> advice, String edition, Tone tone) {

  /** From this force on the wind is worth a caution. */
  private static final WindForce STRONG = WindForce.STRONG_BREEZE;

  /** How it is said. */
  public enum Tone {
    /** A quiet remark. */
    REMARK,
    /** A caution. */
    CAUTION
  }

  /** Copies the list. */
  public WeatherWords {
    advice = List.copyOf(advice);
  }

  /** Whether there is nothing to say. */
  public boolean isEmpty() {
    return seen.isEmpty();
  }

  /** What a forecast means for a session. */
  public static WeatherWords of(ExpectedWeather expected, Units units) {
    Telling telling = new Telling(units);
    telling.warmth(expected.celsius(), expected.humidityPercent());
    expected.windMetresPerSecond().ifPresent(telling::wind);
    return telling.words("Expected: ");
  }

  /** What was noted on court. */
  public static WeatherWords of(Conditions noted, Units units) {
    Telling telling = new Telling(units);
    telling.seen.add(
        switch (noted.wind()) {
          case CALM -> "calm";
          case LIGHT -> "wind that moves soft balls";
          case STRONG -> "wind that changes shots";
        });
    if (noted.sun() == Conditions.Sun.BLINDING) {
      telling.seen.add("sun that blinds one side");
    }
    telling.warmth(noted.temperatureCelsius(), noted.humidityPercent());
    return telling.words("Noted on court: ");
  }

  /** Gathers the parts of the sentences. */
  private static final class Telling {

    private final Units units;
    private final List<String> seen = new ArrayList<>();
    private final List<String> advice = new ArrayList<>();
    private final List<String> editions = new ArrayList<>();
    private Tone tone = Tone.REMARK;

    Telling(Units units) {
      this.units = units;
    }

    void warmth(OptionalDouble celsius, OptionalDouble humidity) {
      celsius.ifPresent(degrees -> seen.add(units.temperature(degrees)));
      humidity.ifPresent(percent -> seen.add(Math.round(percent) + " % humidity"));
      if (celsius.isPresent() && humidity.isPresent()) {
        HeatIndex index =
            HeatIndex.of(Temperature.celsius(celsius.getAsDouble()), humidity.getAsDouble());
        HeatCategory category = index.category();
        seen.add("feels like " + units.temperature(index.celsius()) + " in the shade");
        advice.add("Heat: " + category.words() + ". " + category.advice());
        if (category != HeatCategory.BELOW_CAUTION) {
          advice.add(HeatCategory.ALWAYS);
          tone = Tone.CAUTION;
        }
        editions.add(HeatIndex.EDITION + "; " + HeatCategory.EDITION);
      }
    }

    void wind(double metresPerSecond) {
      WindForce force = WindForce.of(Speed.metresPerSecond(metresPerSecond));
      tone = force.compareTo(STRONG) >= 0 ? Tone.CAUTION : tone;
      seen.add("wind " + units.speed(metresPerSecond));
      advice.add(
          "Wind: " + force.words() + " (Beaufort " + force.number() + "). " + force.advice());
      editions.add("Beaufort scale for the wind, measured at 10 m over open ground");
    }

    WeatherWords words(String opening) {
      return seen.isEmpty()
          ? new WeatherWords("", List.of(), "", tone)
          : new WeatherWords(
              opening + String.join(", ", seen) + ".",
              advice,
              editions.isEmpty() ? "" : "By the " + String.join("; ", editions) + ".",
              tone);
    }
  }
}
