package rallywright.web.shots;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rallywright.engine.aim.ShotStyle;
import rallywright.engine.flight.LaunchAim;
import rallywright.engine.flight.LaunchWindow;
import rallywright.web.page.Units;

/**
 * The window of a shot as a picture: pace to the right, elevation up. Shots of one style have one
 * scale, so that two of them can be compared.
 */
public final class WindowFigure {

  /** The picture's size in its own units; the scales stand left of and below it. */
  static final double WIDE = 320;

  static final double HIGH = 200;

  private static final int ROWS = 66;
  private static final double EIGHT_IN_TEN = Math.sqrt(-2 * Math.log(0.2));
  private static final int TICKS_WANTED = 5;

  private static final Deque<String> NOWHERE = new ArrayDeque<>();

  private static final double LOB_FEET = 19;
  private static final double FLAT_FEET = 10;

  private final double heightFeet;
  private final double slowest;
  private final double fastest;
  private final double lowest;
  private final double highest;
  private final Units units;

  /**
   * A mark on a scale.
   *
   * @param at where it stands
   * @param words what it says
   */
  public record Tick(String at, String words) {}

  private WindowFigure(double[] mps, double[] degrees, Units units) {
    heightFeet = degrees[0] > 0 ? LOB_FEET : FLAT_FEET;
    slowest = mps[0];
    fastest = mps[1];
    lowest = Math.toRadians(degrees[0]);
    highest = Math.toRadians(degrees[1]);
    this.units = units;
  }

  static WindowFigure of(ShotStyle style, Units units) {
    return switch (style) {
      case SOFT -> new WindowFigure(new double[] {3, 18}, new double[] {0, 70}, units);
      case HARD -> new WindowFigure(new double[] {8, 28}, new double[] {-10, 30}, units);
      case DEEP -> new WindowFigure(new double[] {5, 27}, new double[] {-10, 50}, units);
      case OVER -> new WindowFigure(new double[] {5, 25}, new double[] {10, 70}, units);
    };
  }

  /** How high the side view reaches, in feet: a lob needs more. */
  public double heightFeet() {
    return heightFeet;
  }

  /** The marks of the pace. */
  public List<Tick> paces() {
    double unit = units == Units.FEET ? Units.METRES_PER_MILE / 3600 : 1 / 3.6;
    List<Tick> ticks = new ArrayList<>();
    double step = 5 * Math.ceil((fastest - slowest) / unit / TICKS_WANTED / 5);
    for (double at = Math.ceil(slowest / unit / step) * step; at * unit <= fastest; at += step) {
      ticks.add(new Tick(number(x(at * unit)), String.valueOf(Math.round(at))));
    }
    return ticks;
  }

  /** What the pace is measured in. */
  public String paceUnit() {
    return units == Units.FEET ? "mph" : "km/h";
  }

  /** The marks of the elevation. */
  public List<Tick> elevations() {
    List<Tick> ticks = new ArrayList<>();
    double step = 10 * Math.ceil(Math.toDegrees(highest - lowest) / 6 / 10);
    double first = Math.ceil(Math.toDegrees(lowest) / step) * step;
    for (double at = first; at <= Math.toDegrees(highest) + 1e-9; at += step) {
      String words = String.valueOf(Math.round(at)).replace('-', '−') + "°";
      ticks.add(new Tick(number(y(Math.toRadians(at))), words));
    }
    return ticks;
  }

  /** The edge as few long lines: pieces that meet are drawn in one go. */
  String edge(LaunchWindow window) {
    Map<String, Deque<String>> next = new LinkedHashMap<>();
    for (LaunchWindow.Edge edge : window.edges()) {
      String from = point(edge.from());
      String to = point(edge.to());
      if (!from.equals(to)) {
        next.computeIfAbsent(from, place -> new ArrayDeque<>()).add(to);
        next.computeIfAbsent(to, place -> new ArrayDeque<>()).add(from);
      }
    }
    StringBuilder path = new StringBuilder();
    for (String start : next.keySet()) {
      draw(start, next, path);
    }
    return path.toString();
  }

  private static void draw(String start, Map<String, Deque<String>> next, StringBuilder path) {
    String here = start;
    @Nullable String there = taken(here, next);
    if (there != null) {
      path.append('M').append(here);
    }
    while (there != null) {
      path.append('L').append(there);
      here = there;
      there = taken(here, next);
    }
  }

  /** Takes a piece of edge that begins at a place away; says where it ends, or null. */
  private static @Nullable String taken(String here, Map<String, Deque<String>> next) {
    Deque<String> ends = next.getOrDefault(here, NOWHERE);
    @Nullable String there = ends.poll();
    if (there != null) {
      next.getOrDefault(there, NOWHERE).remove(here);
    }
    return there;
  }

  /** Level lines through the region: in at one edge, out at the next. */
  String hatch(LaunchWindow window) {
    StringBuilder path = new StringBuilder();
    for (int row = 1; row < ROWS; row++) {
      double at = lowest + (highest - lowest) * (row + 0.013) / ROWS;
      List<Double> crossings = new ArrayList<>();
      for (LaunchWindow.Edge edge : window.edges()) {
        double from = edge.from().elevation() - at;
        double to = edge.to().elevation() - at;
        if (from > 0 != to > 0) {
          double share = from / (from - to);
          crossings.add((1 - share) * edge.from().speed() + share * edge.to().speed());
        }
      }
      crossings.sort(null);
      for (int i = 0; i + 1 < crossings.size(); i += 2) {
        path.append('M').append(number(x(crossings.get(i)))).append(' ').append(number(y(at)));
        path.append('H').append(number(x(crossings.get(i + 1))));
      }
    }
    return path.toString();
  }

  String at(LaunchAim aim) {
    return "translate(" + number(x(aim.speed())) + " " + number(y(aim.elevation())) + ")";
  }

  /** Half the width that holds eight balls in ten. */
  String wide(double speedSd) {
    return number(EIGHT_IN_TEN * speedSd * WIDE / (fastest - slowest));
  }

  String high(double elevationSd) {
    return number(EIGHT_IN_TEN * elevationSd * HIGH / (highest - lowest));
  }

  private String point(LaunchWindow.Corner corner) {
    return number(x(corner.speed())) + " " + number(y(corner.elevation()));
  }

  private double x(double speed) {
    return WIDE * (speed - slowest) / (fastest - slowest);
  }

  private double y(double elevation) {
    return HIGH * (highest - elevation) / (highest - lowest);
  }

  private static String number(double value) {
    return String.valueOf(Math.round(value * 10) / 10.0);
  }
}
