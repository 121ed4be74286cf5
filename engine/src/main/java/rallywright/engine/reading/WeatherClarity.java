package rallywright.engine.reading;

import java.util.Optional;
import rallywright.engine.quantity.Source;
import rallywright.engine.session.Conditions;
import rallywright.engine.skill.Clarity;

/**
 * How much the recorded weather lets a rally tell about skill. Assumption of this project: no
 * measurement stands behind these shares. Weather that was not noted counts as calm.
 */
public final class WeatherClarity {
  /** A light wind moves soft balls a little. */
  public static final Clarity LIGHT_WIND = new Clarity(0.95);

  /** A strong wind changes shots. */
  public static final Clarity STRONG_WIND = new Clarity(0.8);

  /** A sun that blinds one side. */
  public static final Clarity BLINDING_SUN = new Clarity(0.9);

  /** Where the shares come from. */
  public static final Source SOURCE = Source.ASSUMPTION;

  private WeatherClarity() {}

  /**
   * The clarity of a day.
   *
   * @param conditions the weather, if it was noted
   * @return the product of what wind and sun leave
   */
  public static Clarity of(Optional<Conditions> conditions) {
    return conditions
        .map(noted -> ofWind(noted.wind()).and(ofSun(noted.sun())))
        .orElse(Clarity.FULL);
  }

  private static Clarity ofWind(Conditions.Wind wind) {
    return switch (wind) {
      case CALM -> Clarity.FULL;
      case LIGHT -> LIGHT_WIND;
      case STRONG -> STRONG_WIND;
    };
  }

  private static Clarity ofSun(Conditions.Sun sun) {
    return switch (sun) {
      case NONE -> Clarity.FULL;
      case BLINDING -> BLINDING_SUN;
    };
  }
}
