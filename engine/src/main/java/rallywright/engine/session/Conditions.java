package rallywright.engine.session;

import java.util.OptionalDouble;

/**
 * The weather as the coach notes it.
 *
 * @param wind how strong the wind is felt
 * @param sun whether the sun disturbs one side
 * @param temperatureCelsius the air temperature in °C, −40 to 60, if noted
 * @param humidityPercent the relative humidity in percent, 0 to 100, if noted
 */
public record Conditions(
    Wind wind, Sun sun, OptionalDouble temperatureCelsius, OptionalDouble humidityPercent) {

  /** How strong the wind is felt. */
  public enum Wind {
    /** None to speak of. */
    CALM,
    /** Moves soft balls. */
    LIGHT,
    /** Changes shots. */
    STRONG
  }

  /** Whether the sun disturbs. */
  public enum Sun {
    /** It does not. */
    NONE,
    /** It blinds one side. */
    BLINDING
  }

  /** Checks the ranges; the checks are written so that NaN fails them. */
  public Conditions {
    double celsius = temperatureCelsius.orElse(20);
    if (!(celsius >= -40 && celsius <= 60)) {
      throw new IllegalArgumentException(
          "The temperature ("
              + celsius
              + " °C) must lie from −40 to 60 °C. Maybe it was meant in °F.");
    }
    double humidity = humidityPercent.orElse(50);
    if (!(humidity >= 0 && humidity <= 100)) {
      throw new IllegalArgumentException(
          "The humidity (" + humidity + " %) must lie from 0 to 100 %.");
    }
  }
}
