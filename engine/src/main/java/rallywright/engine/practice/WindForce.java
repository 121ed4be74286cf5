package rallywright.engine.practice;

import rallywright.engine.quantity.Speed;

/**
 * The Beaufort scale: wind by the mean speed over open ground at a height of 10 m, as forecasts
 * give it.
 *
 * <p>Source: the scale of the World Meteorological Organization in m/s as weather services print
 * it, one decimal; a speed between two printed limits is rounded to that decimal. Between fences
 * and at the height of a ball the wind is weaker. The words about soft balls are an assumption of
 * this project.
 */
public enum WindForce {
  /** 0 to 0.2 m/s. */
  CALM(0, "calm", 0),
  /** 0.3 to 1.5 m/s. */
  LIGHT_AIR(1, "light air", 0.3),
  /** 1.6 to 3.3 m/s. */
  LIGHT_BREEZE(2, "light breeze", 1.6),
  /** 3.4 to 5.4 m/s. */
  GENTLE_BREEZE(3, "gentle breeze", 3.4),
  /** 5.5 to 7.9 m/s. */
  MODERATE_BREEZE(4, "moderate breeze", 5.5),
  /** 8.0 to 10.7 m/s. */
  FRESH_BREEZE(5, "fresh breeze", 8.0),
  /** 10.8 to 13.8 m/s. */
  STRONG_BREEZE(6, "strong breeze", 10.8),
  /** 13.9 to 17.1 m/s. */
  NEAR_GALE(7, "near gale", 13.9),
  /** 17.2 to 20.7 m/s. */
  GALE(8, "gale", 17.2),
  /** 20.8 to 24.4 m/s. */
  STRONG_GALE(9, "strong gale", 20.8),
  /** 24.5 to 28.4 m/s. */
  STORM(10, "storm", 24.5),
  /** 28.5 to 32.6 m/s. */
  VIOLENT_STORM(11, "violent storm", 28.5),
  /** 32.7 m/s and more. */
  HURRICANE(12, "hurricane", 32.7);

  private final int number;
  private final String words;
  private final double fromMps;

  WindForce(int number, String words, double fromMps) {
    this.number = number;
    this.words = words;
    this.fromMps = fromMps;
  }

  /**
   * The force of a wind.
   *
   * @param speed its mean speed
   * @return the force, 0 to 12
   */
  public static WindForce of(Speed speed) {
    double tenths = Math.round(speed.metresPerSecond() * 10) / 10.0;
    WindForce found = CALM;
    for (WindForce each : values()) {
      if (tenths >= each.fromMps) {
        found = each;
      }
    }
    return found;
  }

  /**
   * The number of the scale.
   *
   * @return 0 to 12
   */
  public int number() {
    return number;
  }

  /**
   * The name of the scale.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }

  /**
   * What it means on court.
   *
   * @return one sentence
   */
  public String advice() {
    if (number <= 1) {
      return "Hardly felt on court.";
    } else if (number <= 3) {
      return "Moves lobs and soft balls: change ends fairly, and say so when scores are read.";
    } else if (number <= 5) {
      return "Changes most shots: scores tell less today; drives and dinks rather than lobs.";
    }
    return "Too strong to drill outdoors: loose things fly. Move to a hall or to another day.";
  }
}
