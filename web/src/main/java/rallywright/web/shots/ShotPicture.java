package rallywright.web.shots;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import rallywright.engine.aim.LandingSpread;
import rallywright.engine.aim.ShotAnswer;
import rallywright.engine.aim.ShotAnswer.BestShot;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotSetting.Area;
import rallywright.engine.aim.ShotSetting.Place;
import rallywright.engine.court.Net;
import rallywright.engine.quantity.Length;
import rallywright.web.page.Units;

/**
 * What moves in the pictures of a shot: attributes of their parts by the parts' names. Plan and
 * side view are in feet, near end at the bottom and at the left.
 */
final class ShotPicture {

  private static final double FOOT = Units.METRES_PER_FOOT;
  private static final double HATCH = 1.1;
  private static final double OPPONENT_HIGH = 5.7;

  private final ShotAnswer answer;
  private final WindowFigure window;
  private final Map<String, Map<String, String>> parts = new LinkedHashMap<>();

  private ShotPicture(ShotAnswer answer, WindowFigure window) {
    this.answer = answer;
    this.window = window;
  }

  /** The parts of all three pictures. */
  static Map<String, Map<String, String>> parts(ShotAnswer answer, WindowFigure window) {
    ShotPicture picture = new ShotPicture(answer, window);
    picture.plan();
    picture.side();
    picture.window();
    return picture.parts;
  }

  private void plan() {
    ShotSetting setting = answer.setting();
    Area target = setting.target();
    put("plan-target", "d", outline(target));
    put("plan-hatch", "d", hatch(target));
    put("plan-hitter", "transform", at(setting.hitter().place()));
    put("plan-aim-at", "transform", at(target.middle()));
    put("plan-opponent", "transform", at(setting.opponent()));
    put(
        "plan-path",
        "d",
        answer.best().map(best -> line(best, p -> p.across(), p -> -p.along())).orElse(""));
    put("plan-cross", "transform", answer.best().map(b -> at(b.landing())).orElse(AWAY));
    put("plan-spread", "transform", answer.best().map(ShotPicture::turned).orElse(AWAY));
    LandingSpread spread = answer.best().map(BestShot::scatter).orElse(new LandingSpread(0, 0, 0));
    put("plan-spread", "rx", feet(spread.shortHalf()));
    put("plan-spread", "ry", feet(spread.longHalf()));
    double from = setting.day().windFrom();
    put("plan-wind", "transform", "translate(-10.6 23.4) rotate(" + number(from) + ")");
    put("plan-wind", "opacity", setting.day().wind() > 0.2 ? "1" : "0");
  }

  /** Far outside every picture. */
  private static final String AWAY = "translate(-900 -900)";

  private static String turned(BestShot best) {
    double degrees = -Math.toDegrees(best.scatter().turn());
    return at(best.landing()) + " rotate(" + number(degrees) + ")";
  }

  private void side() {
    ShotSetting setting = answer.setting();
    put(
        "side-path",
        "d",
        answer.best().map(best -> line(best, p -> p.along(), p -> -p.height())).orElse(""));
    double net =
        answer
            .best()
            .map(BestShot::netHeight)
            .orElse(Net.heightAt(Length.metres(setting.target().middle().across())).metres());
    put("side-net", "y2", feet(-net));
    double low = answer.band().map(ShotAnswer.NetBand::low).orElse(0.0);
    double high = answer.band().map(ShotAnswer.NetBand::high).orElse(0.0);
    put("side-band", "y1", feet(-net - low));
    put("side-band", "y2", feet(-net - high));
    put("side-target", "x1", feet(setting.target().near()));
    put("side-target", "x2", feet(setting.target().far()));
    put("side-opponent", "transform", "translate(" + feet(setting.opponent().along()) + " 0)");
    put(
        "side-hitter",
        "transform",
        "translate(%s %s)"
            .formatted(feet(setting.hitter().place().along()), feet(-setting.hitter().height())));
    put("side-stand", "x1", feet(setting.hitter().place().along()));
    put("side-stand", "x2", feet(setting.hitter().place().along()));
    put("side-stand", "y2", feet(-setting.hitter().height()));
    put(
        "side-land",
        "transform",
        answer
            .best()
            .map(best -> "translate(" + feet(best.landing().along()) + " 0)")
            .orElse(AWAY));
  }

  private void window() {
    put("window-edge", "d", window.edge(answer.window()));
    put("window-hatch", "d", window.hatch(answer.window()));
    put(
        "window-aim",
        "transform",
        answer.best().map(best -> window.at(best.aim().aim())).orElse(AWAY));
    put(
        "window-spread",
        "transform",
        answer.best().map(best -> window.at(best.aim().aim())).orElse(AWAY));
    double speed = answer.best().map(best -> best.aim().aim().speed()).orElse(0.0);
    put("window-spread", "rx", window.wide(speed * answer.setting().scatter().speed()));
    put("window-spread", "ry", window.high(answer.setting().scatter().elevation()));
  }

  /** How high the opponent's block is drawn, in feet; a figure, not a measure. */
  static double opponentHigh() {
    return OPPONENT_HIGH;
  }

  private static String outline(Area area) {
    return "M%s %sH%sV%sH%sz"
        .formatted(
            feet(area.left()),
            feet(-area.near()),
            feet(area.right()),
            feet(-area.far()),
            feet(area.left()));
  }

  /** Lines that rise to the right, as everywhere. */
  private static String hatch(Area area) {
    double left = area.left() / FOOT;
    double right = area.right() / FOOT;
    double top = -area.far() / FOOT;
    double bottom = -area.near() / FOOT;
    List<String> lines = new ArrayList<>();
    double first = Math.ceil((left + top) / HATCH) * HATCH;
    for (double sum = first; sum <= right + bottom; sum += HATCH) {
      double from = Math.max(left, sum - bottom);
      double to = Math.min(right, sum - top);
      if (from < to) {
        lines.add(
            "M%s %sL%s %s"
                .formatted(number(from), number(sum - from), number(to), number(sum - to)));
      }
    }
    return String.join("", lines);
  }

  /** A coordinate of a point of the ball's way, in metres. */
  private interface Coordinate {
    double of(ShotAnswer.PathPoint point);
  }

  private static String line(BestShot best, Coordinate right, Coordinate down) {
    return best.path().stream()
        .map(point -> feet(right.of(point)) + " " + feet(down.of(point)))
        .collect(Collectors.joining("L", "M", ""));
  }

  private void put(String part, String attribute, String value) {
    parts.computeIfAbsent(part, name -> new LinkedHashMap<>()).put(attribute, value);
  }

  private static String at(Place place) {
    return "translate(%s %s)".formatted(feet(place.across()), feet(-place.along()));
  }

  private static String feet(double metres) {
    return number(metres / FOOT);
  }

  static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
