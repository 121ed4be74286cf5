package rallywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rallywright.engine.aim.BallKind;
import rallywright.engine.aim.LandingLines;
import rallywright.engine.aim.MeasuredScatter;
import rallywright.engine.aim.Measures;
import rallywright.engine.aim.ShotAnswer;
import rallywright.engine.aim.ShotAnswer.BestShot;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotSetting.Day;
import rallywright.engine.aim.ShotSetting.Player;
import rallywright.engine.aim.ShotStudy;
import rallywright.engine.aim.ShotWords;
import rallywright.engine.aim.UsualShot;
import rallywright.engine.flight.Ranged;
import rallywright.engine.flight.Scatter;
import rallywright.engine.quantity.Speed;
import rallywright.web.page.Units;

/** Where to aim a usual shot, in the words of the page. */
final class AimOptions {

  private static final Pattern WIND = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,9})?)(mph|km/h|m/s)");
  private static final double STRONGEST_WIND_MPS = 12;

  @Option(
      names = "--aim",
      paramLabel = "SHOT",
      description = {
        "In place of FILE: where to aim a usual shot from its usual place, and how often it comes"
            + " off. One of drop-straight, drop-cross, drive, serve, reset, dink-straight,"
            + " dink-cross, deep-volley, lob."
      })
  private @Nullable String shot;

  @Option(
      names = "--level",
      paramLabel = "LEVEL",
      description =
          "With --aim: the player's level, 1 to 7; the scatter is assumed from it. Usual: 3.5.")
  private double level = 3.5;

  @Option(
      names = "--landings",
      paramLabel = "FILE",
      description = {
        "With --aim: where this player's balls of the shot landed; the scatter then comes from them"
            + " in place of the level. One ball a line: how far beyond the net and how far right of"
            + " the centre line (left of it below 0), in feet, or in metres with --units metric."
      })
  private @Nullable Path landings;

  @Option(
      names = "--wind",
      paramLabel = "SPEED",
      description = "With --aim: wind on court with its unit: 10mph, 16km/h or 4.5m/s.")
  private @Nullable String wind;

  @Option(
      names = "--wind-from",
      paramLabel = "DEGREES",
      description =
          "With --aim: where the wind comes from: 0 into the hitter's face (usual), 90 from the"
              + " right, 180 from behind, 270 from the left.")
  private double windFrom;

  @Option(
      names = "--ball",
      paramLabel = "BALL",
      description = "With --aim: outdoor (usual) or indoor.")
  private BallKind ball = BallKind.OUTDOOR;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "With --aim: feet (usual) or metric.")
  private Units units = Units.FEET;

  /**
   * The answer as an object; numbers are null where nothing succeeds.
   *
   * @param shot the usual shot
   * @param level of the player
   * @param landings that the scatter comes from; null where it is assumed from the level
   * @param scatter in 100 of the pace, degrees up and down, degrees sideways
   * @param chance of success with the best aim
   * @param chanceRange over the spread of drag and lift, four balls in five
   * @param landX_m where the aim lands, beyond the net
   * @param landY_m where the aim lands, to the hitter's left
   * @param overNet_m air between the net and the ball
   * @param speed_mps off the paddle
   * @param elevation_deg above the level
   * @param bearing_deg to the hitter's left
   * @param windowArea in m/s × degrees
   * @param fourInFive what the spread of drag and lift does to the other numbers
   * @param words the sentences of the page
   */
  record Aimed(
      String shot,
      double level,
      @Nullable Integer landings,
      List<Double> scatter,
      @Nullable Double chance,
      @Nullable List<Double> chanceRange,
      @Nullable Double landX_m,
      @Nullable Double landY_m,
      @Nullable Double overNet_m,
      @Nullable Double speed_mps,
      @Nullable Double elevation_deg,
      @Nullable Double bearing_deg,
      double windowArea,
      @Nullable AimedRanges fourInFive,
      List<String> words) {}

  boolean isAsked() {
    return shot != null;
  }

  void print(PrintWriter out, boolean json) {
    ShotSetting setting = setting();
    ShotAnswer answer = ShotStudy.full(setting);
    List<String> words = words(answer, units);
    if (json) {
      JsonAnswer.print(out, aimed(answer, words));
    } else {
      out.println(
          setting.shot().words() + (landings == null ? ", level " + level : ", own landings"));
      words.forEach(out::println);
      out.flush();
    }
  }

  private ShotSetting setting() {
    if (!(windFrom >= 0 && windFrom < 360)) {
      throw new IllegalArgumentException(
          "--wind-from (%s) must be from 0 to below 360 degrees. Maybe 0.".formatted(windFrom));
    }
    ShotSetting usual = usual().usual().on(new Day(ball, windMps(), windFrom, 0, 20)).at(level);
    return landings == null
        ? usual
        : usual.by(new Player(level, Optional.of(measured(usual, landings))));
  }

  private MeasuredScatter measured(ShotSetting usual, Path file) {
    try {
      boolean feet = units == Units.FEET;
      String unit = feet ? "feet" : "metres";
      String text = Files.readString(file);
      return MeasuredScatter.of(
          usual, LandingLines.read(text, feet ? Units.METRES_PER_FOOT : 1, unit));
    } catch (IOException unreadable) {
      throw new IllegalArgumentException(
          "--landings: the file \"%s\" cannot be read as text. Maybe check its name."
              .formatted(file),
          unreadable);
    } catch (IllegalArgumentException refused) {
      throw new IllegalArgumentException(
          "--landings, file \"%s\": %s".formatted(file, refused.getMessage()), refused);
    }
  }

  private UsualShot usual() {
    String asked = shot == null ? "" : shot.toUpperCase(Locale.ROOT).replace('-', '_');
    return Arrays.stream(UsualShot.values())
        .filter(each -> each.name().equals(asked))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "There is no shot \"%s\"; there are %s. Maybe drop-straight."
                        .formatted(
                            shot,
                            Arrays.stream(UsualShot.values())
                                .map(each -> each.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                                .collect(Collectors.joining(", ")))));
  }

  private double windMps() {
    if (wind == null) {
      return 0;
    }
    Matcher parts = WIND.matcher(wind);
    if (parts.matches()) {
      double number = Double.parseDouble(parts.group(1));
      double speed =
          switch (parts.group(2)) {
            case "mph" -> Speed.mph(number).metresPerSecond();
            case "km/h" -> Speed.kmh(number).metresPerSecond();
            default -> number;
          };
      if (speed <= STRONGEST_WIND_MPS) {
        return speed;
      }
    }
    throw new IllegalArgumentException(
        ("--wind (%s) must be a number with mph, km/h or m/s, at most 12 m/s (26 mph)."
                + " Maybe 10mph.")
            .formatted(wind));
  }

  private static List<String> words(ShotAnswer answer, Measures measures) {
    ShotWords words = ShotWords.of(answer, measures);
    List<String> lines = new ArrayList<>(List.of(words.advice()));
    if (!words.band().isEmpty()) {
      lines.add(words.band());
    }
    lines.addAll(words.more());
    lines.add(words.counts());
    lines.add(words.whose());
    return lines;
  }

  private Aimed aimed(ShotAnswer answer, List<String> words) {
    @Nullable BestShot best = answer.best().orElse(null);
    @Nullable Ranged range = answer.closer().map(closer -> closer.aim().chance()).orElse(null);
    Scatter scatter = answer.setting().scatter();
    return new Aimed(
        answer.setting().shot().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        level,
        answer.setting().player().measured().map(MeasuredScatter::balls).orElse(null),
        List.of(
            100 * scatter.speed(),
            Math.toDegrees(scatter.elevation()),
            Math.toDegrees(scatter.bearing())),
        best == null ? null : best.aim().chance(),
        range == null ? null : List.of(range.low(), range.high()),
        best == null ? null : best.aim().landing().x(),
        best == null ? null : best.aim().landing().y(),
        best == null ? null : best.aim().clearance(),
        best == null ? null : best.aim().aim().speed(),
        best == null ? null : Math.toDegrees(best.aim().aim().elevation()),
        best == null ? null : Math.toDegrees(best.aim().aim().bearing()),
        answer.window().area(),
        answer.closer().map(AimedRanges::of).orElse(null),
        words);
  }
}
