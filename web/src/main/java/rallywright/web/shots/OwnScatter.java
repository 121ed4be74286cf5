package rallywright.web.shots;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rallywright.engine.aim.LandingLines;
import rallywright.engine.aim.MeasuredScatter;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.flight.Scatter;
import rallywright.web.page.FormReader;
import rallywright.web.page.Units;

/**
 * A player's own scatter in addresses and forms: the landings as they were typed, and what came out
 * of them, so that it stays the same when the shot is moved afterwards. Nothing is stored.
 */
final class OwnScatter {

  /** What came out: pace in 100, height and direction in degrees, balls, in the net, range. */
  static final String FIELD = "own";

  /** The landings as typed. */
  static final String LANDINGS = "balls";

  private static final int LONGEST = 6000;
  private static final Pattern WRITTEN =
      Pattern.compile(
          "(\\d{1,2}\\.\\d{1,4})_(\\d{1,2}\\.\\d{1,4})_(\\d{1,2}\\.\\d{1,4})_(\\d{1,3})"
              + "_(\\d{1,3})_(\\d{1,2}\\.\\d{1,4})_(\\d{1,2}\\.\\d{1,4})");

  private OwnScatter() {}

  /** The scatter of a form; empty where there is none, or after a mistake. */
  static Optional<MeasuredScatter> read(FormReader in, String field) {
    String text = in.raw(field).strip();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher parts = WRITTEN.matcher(text);
    if (!parts.matches()) {
      in.problem(
          field, "The scatter in the address is not complete. Maybe type the landings anew.");
      return Optional.empty();
    }
    return Optional.ofNullable(
        in.built(
            field,
            () ->
                new MeasuredScatter(
                    new Scatter(
                        Double.parseDouble(parts.group(1)) / 100,
                        Math.toRadians(Double.parseDouble(parts.group(2))),
                        Math.toRadians(Double.parseDouble(parts.group(3)))),
                    Integer.parseInt(parts.group(4)),
                    Integer.parseInt(parts.group(5)),
                    Double.parseDouble(parts.group(6)),
                    Double.parseDouble(parts.group(7)))));
  }

  /** The scatter as its field holds it. */
  static String written(MeasuredScatter own) {
    return String.format(
        Locale.ROOT,
        "%.4f_%.4f_%.4f_%d_%d_%.4f_%.4f",
        100 * own.scatter().speed(),
        Math.toDegrees(own.scatter().elevation()),
        Math.toDegrees(own.scatter().bearing()),
        own.balls(),
        own.inTheNet(),
        own.least(),
        own.most());
  }

  /** The setting with the scatter of the landings typed; without one where nothing is typed. */
  static ShotSetting measured(FormReader in, String prefix, ShotSetting setting, Units units) {
    String field = prefix + LANDINGS;
    String text = in.lines(field, "The landings", LONGEST);
    ShotSetting assumed = setting.at(setting.level());
    if (text.isEmpty() || in.failed()) {
      return assumed;
    }
    boolean feet = units == Units.FEET;
    Optional<MeasuredScatter> own =
        Optional.ofNullable(
            in.built(
                field,
                () -> {
                  LandingLines hit =
                      LandingLines.read(
                          text, feet ? Units.METRES_PER_FOOT : 1, feet ? "feet" : "metres");
                  return MeasuredScatter.of(setting, hit);
                }));
    return assumed.by(new ShotSetting.Player(setting.level(), own));
  }
}
