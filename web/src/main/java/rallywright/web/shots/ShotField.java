package rallywright.web.shots;

import java.util.Locale;
import java.util.OptionalDouble;
import rallywright.engine.aim.ShotSetting;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.FormReader;
import rallywright.web.page.Units;

/** The numbers of a shot that a coach sets, each with its range; metric inside. */
enum ShotField {
  HITTER_ACROSS("hx", "Right of the centre line", Kind.LENGTH, -4.5, 4.5),
  HITTER_FROM_NET("hn", "From the net", Kind.LENGTH, 0.3, 7.9),
  CONTACT_HEIGHT("hh", "Contact height", Kind.HEIGHT, 0.1, 3),
  TARGET_ACROSS("tx", "Middle, right of the centre line", Kind.LENGTH, -3.0, 3.0),
  TARGET_FROM_NET("tn", "Middle, from the net", Kind.LENGTH, 0.3, 6.6),
  TARGET_WIDTH("tw", "Width", Kind.LENGTH, 0.3, 6.1),
  TARGET_DEPTH("td", "Depth", Kind.LENGTH, 0.3, 6.8),
  OPPONENT_ACROSS("ox", "Right of the centre line", Kind.LENGTH, -4.5, 4.5),
  OPPONENT_FROM_NET("on", "From the net", Kind.LENGTH, 0.6, 7.9),
  WIND("wind", "Wind on court", Kind.SPEED, 0, 12),
  WIND_FROM("from", "Wind comes from", Kind.BEARING, 0, 359),
  ALTITUDE("alt", "Height above the sea", Kind.ALTITUDE, 0, 3000),
  TEMPERATURE("temp", "Temperature", Kind.TEMPERATURE, -10, 45),
  LEVEL("level", "Level of the player", Kind.LEVEL, 1, 7);

  private final String field;
  private final String label;
  private final Kind kind;
  private final double smallest;
  private final double largest;

  /** What kind of quantity it is. */
  private enum Kind {
    LENGTH,
    HEIGHT,
    SPEED,
    BEARING,
    ALTITUDE,
    TEMPERATURE,
    LEVEL;

    Scale in(Units units) {
      boolean feet = units == Units.FEET;
      double perMetre = feet ? 1 / Units.METRES_PER_FOOT : 1;
      String unit = feet ? "ft" : "m";
      return switch (this) {
        case LENGTH -> new Scale(perMetre, 0, feet ? 0.5 : 0.1, unit);
        case HEIGHT -> new Scale(perMetre, 0, feet ? 0.1 : 0.05, unit);
        case SPEED ->
            new Scale(feet ? 3600 / Units.METRES_PER_MILE : 3.6, 0, 1, feet ? "mph" : "km/h");
        case BEARING -> new Scale(1, 0, 5, "°");
        case ALTITUDE -> new Scale(perMetre, 0, feet ? 100 : 50, unit);
        case TEMPERATURE -> feet ? new Scale(1.8, 32, 1, "°F") : new Scale(1, 0, 1, "°C");
        case LEVEL -> new Scale(1, 0, 0.5, "");
      };
    }
  }

  /** What is shown is the metric value times the factor, and the offset. */
  private record Scale(double factor, double offset, double step, String unit) {
    double shown(double metric) {
      return factor * metric + offset;
    }

    double metric(double shown) {
      return (shown - offset) / factor;
    }
  }

  ShotField(String field, String label, Kind kind, double smallest, double largest) {
    this.field = field;
    this.label = label;
    this.kind = kind;
    this.smallest = smallest;
    this.largest = largest;
  }

  /** The name in addresses and forms. */
  String field() {
    return field;
  }

  /** What stands beside it, with its unit. */
  String label(Units units) {
    String unit = kind.in(units).unit();
    return unit.isEmpty() ? label : label + ", " + unit;
  }

  /** The unit alone. */
  String unit(Units units) {
    return kind.in(units).unit();
  }

  double step(Units units) {
    return kind.in(units).step();
  }

  /** The range as shown, to whole steps inward. */
  String least(Units units) {
    return plain(Math.ceil(kind.in(units).shown(smallest) * 10 - 1e-6) / 10);
  }

  String most(Units units) {
    return plain(Math.floor(kind.in(units).shown(largest) * 10 + 1e-6) / 10);
  }

  /** What is allowed, for the sentence after a mistake. */
  AllowedNumber allowed(Units units, ShotSetting usual) {
    return new AllowedNumber(
        label + (unit(units).isEmpty() ? "" : " in " + unit(units)),
        Double.parseDouble(least(units)),
        Double.parseDouble(most(units)),
        "Maybe " + shown(usual, units) + ".");
  }

  /**
   * Its value in metric units as it came in; that of the usual shot where it is missing or wrong.
   *
   * @param prefix before its name in the form
   */
  double read(FormReader in, String prefix, Units units, ShotSetting usual) {
    OptionalDouble shown = in.number(prefix + field, allowed(units, usual));
    return shown.isPresent() ? metric(shown.getAsDouble(), units) : metric(usual);
  }

  /** What stands in the field for a setting. */
  String shown(ShotSetting setting, Units units) {
    double shown = kind.in(units).shown(metric(setting));
    boolean fine = kind == Kind.HEIGHT || (kind == Kind.LENGTH && units == Units.METRIC);
    double digits = fine ? 100 : 10;
    return plain(Math.round(shown * digits) / digits);
  }

  /** Its value in a setting, in metres, metres per second, degrees or degrees Celsius. */
  double metric(ShotSetting setting) {
    return switch (this) {
      case HITTER_ACROSS -> setting.hitter().place().across();
      case HITTER_FROM_NET -> -setting.hitter().place().along();
      case CONTACT_HEIGHT -> setting.hitter().height();
      case TARGET_ACROSS -> setting.target().middle().across();
      case TARGET_FROM_NET -> setting.target().middle().along();
      case TARGET_WIDTH -> setting.target().width();
      case TARGET_DEPTH -> setting.target().depth();
      case OPPONENT_ACROSS -> setting.opponent().across();
      case OPPONENT_FROM_NET -> setting.opponent().along();
      case WIND -> setting.day().wind();
      case WIND_FROM -> setting.day().windFrom();
      case ALTITUDE -> setting.day().altitude();
      case TEMPERATURE -> setting.day().celsius();
      case LEVEL -> setting.level();
    };
  }

  double metric(double shown, Units units) {
    return kind.in(units).metric(shown);
  }

  private static String plain(double number) {
    return number == Math.rint(number)
        ? String.valueOf((long) number)
        : String.format(Locale.ROOT, "%.2f", number).replaceAll("0$", "");
  }
}
