package rallywright.web.shots;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.aim.BallKind;
import rallywright.engine.aim.HitSpin;
import rallywright.engine.aim.ShotAnswer;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotWords;
import rallywright.web.page.Units;

/**
 * One shot as its page shows it.
 *
 * @param id what the ids of its parts begin with
 * @param prefix what the names of its fields begin with
 * @param title the shot in the trade's words
 * @param parts attributes of what moves, by part
 * @param words the answer in words
 * @param figure the scales of the window
 * @param query the shot as part of an address
 */
public record ShotView(
    String id,
    String prefix,
    String title,
    Map<String, Map<String, String>> parts,
    Words words,
    WindowFigure figure,
    String query) {

  /**
   * An answer in words.
   *
   * @param advice where to aim and how often it comes off
   * @param band how high over the net
   * @param counts what counts
   * @param whose whose scatter it is
   * @param wind the wind
   * @param more pace, balls, steadier hand, opponent; empty while a picture is dragged
   */
  public record Words(
      String advice, String band, String counts, String whose, String wind, List<String> more) {

    static Words of(ShotAnswer answer, Units units) {
      ShotWords words = ShotWords.of(answer, units);
      return new Words(
          words.advice(),
          words.band(),
          words.counts(),
          words.whose(),
          wind(answer.setting(), units),
          words.more());
    }

    private static String wind(ShotSetting setting, Units units) {
      return setting.day().wind() < 0.2
          ? "still air"
          : units.speed(setting.day().wind()) + " " + ShotWords.windFrom(setting.day().windFrom());
    }

    /** The sentences by their places on the page. */
    Map<String, String> byPlace() {
      Map<String, String> places = new LinkedHashMap<>();
      places.put("advice", advice);
      places.put("band", band);
      places.put("counts", counts);
      places.put("whose", whose);
      places.put("wind", wind);
      return places;
    }
  }

  static ShotView of(ShotAnswer answer, String prefix, Units units) {
    ShotSetting setting = answer.setting();
    WindowFigure figure = WindowFigure.of(setting.shot().style(), units);
    return new ShotView(
        prefix.isEmpty() ? "a" : "b",
        prefix,
        setting.shot().words(),
        ShotPicture.parts(answer, figure),
        Words.of(answer, units),
        figure,
        ShotForm.query(setting, "", units));
  }

  /** An attribute of a part. */
  public String part(String part, String attribute) {
    return parts.getOrDefault(part, Map.of()).getOrDefault(attribute, "");
  }

  /** What ids of fields and parts begin with. */
  public String id(String name) {
    return id + "-" + name;
  }

  /** The width of the window's picture. */
  public double wide() {
    return WindowFigure.WIDE;
  }

  /** The height of the window's picture. */
  public double high() {
    return WindowFigure.HIGH;
  }

  /** The spins to choose from. */
  public static Map<String, String> spins() {
    Map<String, String> words = new LinkedHashMap<>();
    Arrays.stream(HitSpin.values()).forEach(each -> words.put(each.name(), each.words()));
    return words;
  }

  /** The balls to choose from. */
  public static Map<String, String> balls() {
    Map<String, String> words = new LinkedHashMap<>();
    Arrays.stream(BallKind.values()).forEach(each -> words.put(each.name(), each.words()));
    return words;
  }
}
