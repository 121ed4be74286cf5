package rallywright.web.shots;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rallywright.engine.aim.BallKind;
import rallywright.engine.aim.HitSpin;
import rallywright.engine.aim.MeasuredScatter;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotSetting.Area;
import rallywright.engine.aim.ShotSetting.Day;
import rallywright.engine.aim.ShotSetting.Hitter;
import rallywright.engine.aim.ShotSetting.Place;
import rallywright.engine.aim.ShotSetting.Player;
import rallywright.engine.aim.UsualShot;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.Units;

/**
 * A shot as the fields of a form or address: a field that is missing has the value of the usual
 * shot. The second of two shots has the same names after a prefix.
 */
final class ShotForm {

  /** What stands before the field names of the second shot. */
  static final String SECOND = "b.";

  private static final String SHOT = "shot";
  private static final String SPIN = "spin";
  private static final String BALL = "ball";

  private ShotForm() {}

  /** Whether the request sets up a second shot. */
  static boolean hasSecond(FormReader in) {
    return !in.raw(SECOND + SHOT).isBlank();
  }

  /** The shot of a request; null after a mistake, which the reader then holds. */
  static @Nullable ShotSetting read(FormReader in, String prefix, Units units) {
    UsualShot shot = in.choice(prefix + SHOT, "The shot", UsualShot.DROP_STRAIGHT);
    ShotSetting usual = shot.usual();
    HitSpin spin = in.choice(prefix + SPIN, "The spin", usual.hitter().spin());
    BallKind ball = in.choice(prefix + BALL, "The ball", usual.day().ball());
    Map<ShotField, Double> numbers = new EnumMap<>(ShotField.class);
    for (ShotField field : ShotField.values()) {
      numbers.put(field, field.read(in, prefix, units, usual));
    }
    if (in.failed()) {
      return null;
    }
    Optional<MeasuredScatter> own = OwnScatter.read(in, prefix + OwnScatter.FIELD);
    @Nullable ShotSetting setting =
        in.built(
            prefix + ShotField.TARGET_FROM_NET.field(), () -> built(shot, spin, ball, numbers));
    return setting == null ? null : setting.by(new Player(setting.level(), own));
  }

  private static ShotSetting built(
      UsualShot shot, HitSpin spin, BallKind ball, Map<ShotField, Double> numbers) {
    return new ShotSetting(
        shot,
        new Hitter(
            new Place(
                number(numbers, ShotField.HITTER_ACROSS),
                -number(numbers, ShotField.HITTER_FROM_NET)),
            number(numbers, ShotField.CONTACT_HEIGHT),
            spin),
        new Area(
            new Place(
                number(numbers, ShotField.TARGET_ACROSS),
                number(numbers, ShotField.TARGET_FROM_NET)),
            number(numbers, ShotField.TARGET_WIDTH),
            number(numbers, ShotField.TARGET_DEPTH)),
        new Place(
            number(numbers, ShotField.OPPONENT_ACROSS),
            number(numbers, ShotField.OPPONENT_FROM_NET)),
        new Day(
            ball,
            number(numbers, ShotField.WIND),
            number(numbers, ShotField.WIND_FROM),
            number(numbers, ShotField.ALTITUDE),
            number(numbers, ShotField.TEMPERATURE)),
        Player.ofLevel(number(numbers, ShotField.LEVEL)));
  }

  private static double number(Map<ShotField, Double> numbers, ShotField field) {
    Double number = numbers.get(field);
    if (number == null) {
      throw new IllegalStateException("The field " + field + " was not read.");
    }
    return number;
  }

  /** The fields of a setting by name. */
  static Map<String, String> fields(ShotSetting setting, String prefix, Units units) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put(prefix + SHOT, setting.shot().name());
    fields.put(prefix + SPIN, setting.hitter().spin().name());
    fields.put(prefix + BALL, setting.day().ball().name());
    for (ShotField field : ShotField.values()) {
      fields.put(prefix + field.field(), field.shown(setting, units));
    }
    setting
        .player()
        .measured()
        .ifPresent(own -> fields.put(prefix + OwnScatter.FIELD, OwnScatter.written(own)));
    return fields;
  }

  /** A setting as the part of an address after the question mark. */
  static String query(ShotSetting setting, String prefix, Units units) {
    return fields(setting, prefix, units).entrySet().stream()
        .map(
            each ->
                each.getKey() + "=" + URLEncoder.encode(each.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }

  /** A form with the fields of a setting in it. */
  static Form filled(Form form, ShotSetting setting, String prefix, Units units) {
    Form filled = form;
    for (Map.Entry<String, String> each : fields(setting, prefix, units).entrySet()) {
      filled = filled.with(each.getKey(), each.getValue());
    }
    return filled;
  }
}
