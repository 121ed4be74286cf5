package rallywright.web.page;

import java.util.Locale;
import rallywright.engine.aim.Measures;

/**
 * The units in which pages write lengths, speeds and temperatures. Inside, everything is metric.
 *
 * <p>1 ft = 0.3048 m and 1 mile = 1609.344 m exactly (international yard and pound agreement of
 * 1959).
 */
public enum Units implements Measures {
  /** Feet and inches, miles per hour, degrees Fahrenheit. */
  FEET("feet, inches and mph") {
    @Override
    public String length(double metres) {
      long inches = Math.round(metres / METRES_PER_FOOT * INCHES_PER_FOOT);
      String sign = inches < 0 ? "−" : "";
      long feet = Math.abs(inches) / INCHES_PER_FOOT;
      long rest = Math.abs(inches) % INCHES_PER_FOOT;
      if (feet == 0) {
        return sign + rest + " in";
      }
      return sign + feet + " ft" + (rest == 0 ? "" : " " + rest + " in");
    }

    @Override
    public String about(double metres) {
      long halves = Math.round(metres / METRES_PER_FOOT * 2);
      if (halves == 0) {
        return small(metres);
      }
      String feet = halves / 2 == 0 ? "" : String.valueOf(halves / 2);
      return feet + (halves % 2 == 0 ? "" : "½") + " ft";
    }

    @Override
    public String small(double metres) {
      return whole(metres / METRES_PER_FOOT * INCHES_PER_FOOT) + " in";
    }

    @Override
    public String altitude(double metres) {
      return whole(metres / METRES_PER_FOOT) + " ft";
    }

    @Override
    public String speed(double metresPerSecond) {
      return whole(metresPerSecond * 3600 / METRES_PER_MILE) + " mph";
    }

    @Override
    public String temperature(double celsius) {
      return whole(celsius * 9 / 5 + 32) + "\u00a0°F";
    }
  },
  /** Metres, kilometres per hour, degrees Celsius. */
  METRIC("metres and km/h") {
    @Override
    public String length(double metres) {
      return String.format(Locale.ROOT, "%.2f m", metres).replace('-', '−');
    }

    @Override
    public String about(double metres) {
      return metres < 0.095 ? small(metres) : String.format(Locale.ROOT, "%.1f m", metres);
    }

    @Override
    public String small(double metres) {
      return whole(metres * 100) + " cm";
    }

    @Override
    public String altitude(double metres) {
      return whole(metres) + " m";
    }

    @Override
    public String speed(double metresPerSecond) {
      return whole(metresPerSecond * 3.6) + " km/h";
    }

    @Override
    public String temperature(double celsius) {
      return whole(celsius) + "\u00a0°C";
    }
  };

  /** Metres in a foot, exactly. */
  public static final double METRES_PER_FOOT = 0.3048;

  /** Metres in a mile, exactly. */
  public static final double METRES_PER_MILE = 1609.344;

  private static final long INCHES_PER_FOOT = 12;

  private final String words;

  Units(String words) {
    this.words = words;
  }

  /** The choice as settings name it. */
  public String words() {
    return words;
  }

  /** A height above the sea, to the foot or metre. */
  public abstract String altitude(double metres);

  /** An air temperature, to the degree. */
  public abstract String temperature(double celsius);

  private static String whole(double value) {
    return String.valueOf(Math.round(value)).replace('-', '−');
  }
}
