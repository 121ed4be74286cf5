package rallywright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rallywright.engine.court.Court;
import rallywright.engine.court.CourtPoint;
import rallywright.engine.court.Polygon;
import rallywright.paper.sheet.Mark;

/**
 * A court in feet, seen from above with the near end at the bottom, drawn in black on white.
 *
 * <p>Hatching is drawn line by line, since printers and PDF readers differ on filled patterns.
 */
final class CourtSvg {

  private static final double HALF_WIDTH = Court.HALF_WIDTH.feet();
  private static final double HALF_LENGTH = Court.HALF_LENGTH.feet();
  private static final double KITCHEN = Court.KITCHEN_DEPTH.feet();
  private static final double NET_REACH = Court.BETWEEN_POSTS.feet() / 2;

  /** White around the lines in feet, enough for a player behind the baseline. */
  private static final double EDGE = 2.5;

  private static final double HATCH_STEP = 1.3;
  private static final double BLOCK = 2.2;
  private static final double ARROW = 1.5;

  private final StringBuilder shapes = new StringBuilder();

  CourtSvg() {
    append(
        "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"#ffffff\"/>",
        -HALF_WIDTH, -HALF_LENGTH, 2 * HALF_WIDTH, 2 * HALF_LENGTH);
  }

  /** Shades an area with lines that rise to the right. */
  CourtSvg hatched(Polygon area) {
    List<double[]> corners = area.corners().stream().map(CourtSvg::onPaper).toList();
    StringBuilder path = new StringBuilder();
    double reach = HALF_WIDTH + HALF_LENGTH;
    for (double sum = -reach; sum <= reach; sum += HATCH_STEP) {
      List<Double> crossings = crossings(corners, sum);
      for (int place = 0; place + 1 < crossings.size(); place += 2) {
        double from = crossings.get(place);
        double to = crossings.get(place + 1);
        path.append(text("M%s %sL%s %s", from, sum - from, to, sum - to));
      }
    }
    append("<path d=\"%s\" stroke=\"#8a8a8a\" stroke-width=\"0.22\" fill=\"none\"/>", path);
    return this;
  }

  /** The lines of the court and the net over everything shaded so far. */
  CourtSvg lines() {
    append(
        "<path d=\"M%1$s %2$sH%3$sV%4$sH%1$sz\" stroke=\"#000000\" stroke-width=\"0.36\""
            + " fill=\"none\"/>",
        -HALF_WIDTH, -HALF_LENGTH, HALF_WIDTH, HALF_LENGTH);
    append(
        "<path d=\"M%1$s %3$sH%2$sM%1$s %4$sH%2$sM0 %5$sV%3$sM0 %4$sV%6$s\" stroke=\"#000000\""
            + " stroke-width=\"0.3\" fill=\"none\"/>",
        -HALF_WIDTH, HALF_WIDTH, -KITCHEN, KITCHEN, -HALF_LENGTH, HALF_LENGTH);
    append(
        "<path d=\"M%s 0H%s\" stroke=\"#000000\" stroke-width=\"0.8\" fill=\"none\"/>",
        -NET_REACH, NET_REACH);
    return this;
  }

  /** The line of play between two places, with an arrow head at each end. */
  CourtSvg direction(CourtPoint from, CourtPoint to) {
    double[] start = onPaper(from);
    double[] end = onPaper(to);
    double length = Math.hypot(end[0] - start[0], end[1] - start[1]);
    double[] unit = {(end[0] - start[0]) / length, (end[1] - start[1]) / length};
    double[] tail = {start[0] + BLOCK * unit[0], start[1] + BLOCK * unit[1]};
    double[] head = {end[0] - BLOCK * unit[0], end[1] - BLOCK * unit[1]};
    append(
        "<path d=\"M%s %sL%s %s\" stroke=\"#000000\" stroke-width=\"0.3\""
            + " stroke-dasharray=\"1.1 0.7\" fill=\"none\"/>",
        tail[0], tail[1], head[0], head[1]);
    arrowHead(head, unit);
    arrowHead(tail, new double[] {-unit[0], -unit[1]});
    return this;
  }

  /** A player as a block. */
  CourtSvg player(CourtPoint place, Mark mark) {
    double[] at = onPaper(place);
    append(
        "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\" stroke=\"#000000\""
            + " stroke-width=\"0.5\"/>",
        at[0] - BLOCK / 2,
        at[1] - BLOCK / 2,
        BLOCK,
        BLOCK,
        mark == Mark.SOLID ? "#000000" : "#ffffff");
    return this;
  }

  /** The finished drawing, described for readers who do not see it. */
  String describedAs(String words) {
    double left = -HALF_WIDTH - EDGE / 2;
    double top = -HALF_LENGTH - EDGE;
    return text(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"%s %s %s %s\" width=\"46\""
                + " height=\"98\" role=\"img\"",
            left, top, -2 * left, -2 * top)
        + " aria-label=\"%1$s\" alt=\"%1$s\" title=\"%1$s\">".formatted(words)
        + shapes
        + "</svg>";
  }

  private void arrowHead(double[] tip, double[] unit) {
    double backX = tip[0] - ARROW * unit[0];
    double backY = tip[1] - ARROW * unit[1];
    double sideX = -unit[1] * ARROW * 0.4;
    double sideY = unit[0] * ARROW * 0.4;
    append(
        "<path d=\"M%s %sL%s %sL%s %sz\" fill=\"#000000\"/>",
        tip[0], tip[1], backX + sideX, backY + sideY, backX - sideX, backY - sideY);
  }

  /** Where the line x + y = sum enters and leaves the area, as x from left to right. */
  private static List<Double> crossings(List<double[]> corners, double sum) {
    List<Double> crossings = new ArrayList<>();
    for (int place = 0; place < corners.size(); place++) {
      double[] from = corners.get(place);
      double[] to = corners.get((place + 1) % corners.size());
      double before = from[0] + from[1] - sum;
      double after = to[0] + to[1] - sum;
      if (before < 0 != after < 0) {
        crossings.add(from[0] + (to[0] - from[0]) * before / (before - after));
      }
    }
    crossings.sort(null);
    return crossings;
  }

  /** Feet to the right of the centre line and feet down the paper from the net. */
  private static double[] onPaper(CourtPoint point) {
    return new double[] {point.across().feet(), -point.along().feet()};
  }

  private void append(String format, Object... values) {
    shapes.append(text(format, values));
  }

  private static String text(String format, Object... values) {
    Object[] words = new Object[values.length];
    for (int place = 0; place < values.length; place++) {
      words[place] =
          values[place] instanceof Double number
              ? String.format(Locale.ROOT, "%.2f", number)
              : values[place];
    }
    return format.formatted(words);
  }
}
