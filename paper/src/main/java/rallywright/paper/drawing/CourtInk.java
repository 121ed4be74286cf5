package rallywright.paper.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rallywright.engine.court.Court;
import rallywright.engine.court.CourtPoint;
import rallywright.engine.court.Polygon;
import rallywright.paper.sheet.Mark;

/**
 * Writes the shapes of a drawing, in feet, seen from above with the near end at the bottom.
 *
 * <p>Ink is the current colour and the ground is white unless the page says otherwise (classes
 * court-drawing and court-ground), so that a dark page turns the drawing with it. Hatching is drawn
 * line by line, since printers and PDF readers differ on filled patterns.
 */
final class CourtInk {

  static final double HALF_WIDTH = Court.HALF_WIDTH.feet();
  static final double HALF_LENGTH = Court.HALF_LENGTH.feet();
  private static final double KITCHEN = Court.KITCHEN_DEPTH.feet();

  private static final double NET_REACH = Court.BETWEEN_POSTS.feet() / 2;
  private static final double HATCH_STEP = 1.3;
  private static final double BLOCK = 2.2;
  private static final double ARROW = 1.5;

  /** Lines are drawn half as wide again as on a court (2 in), or they would vanish on paper. */
  private static final double LINE = 1.5 * Court.LINE_WIDTH.feet();

  private final StringBuilder shapes = new StringBuilder();

  CourtInk() {
    append(
        "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"#ffffff\""
            + " class=\"court-ground\"/>",
        -HALF_WIDTH, -HALF_LENGTH, 2 * HALF_WIDTH, 2 * HALF_LENGTH);
  }

  /** Shades an area with lines that rise to the right, and bounds it with a thin line. */
  void hatched(Polygon area) {
    List<double[]> corners = area.corners().stream().map(CourtInk::onPaper).toList();
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
    append(
        "<path d=\"%s\" stroke=\"currentColor\" stroke-opacity=\"0.45\" stroke-width=\"0.22\""
            + " fill=\"none\"/>",
        path);
    StringBuilder edge = new StringBuilder();
    for (double[] corner : corners) {
      edge.append(text(edge.isEmpty() ? "M%s %s" : "L%s %s", corner[0], corner[1]));
    }
    append("<path d=\"%sz\" stroke=\"currentColor\" stroke-width=\"0.18\" fill=\"none\"/>", edge);
  }

  /** The lines of the court and the net over everything shaded so far. */
  void lines() {
    append(
        "<path d=\"M%1$s %2$sH%3$sV%4$sH%1$sz\" stroke=\"currentColor\" stroke-width=\"%5$s\""
            + " fill=\"none\"/>",
        -HALF_WIDTH, -HALF_LENGTH, HALF_WIDTH, HALF_LENGTH, LINE);
    append(
        "<path d=\"M%1$s %3$sH%2$sM%1$s %4$sH%2$sM0 %5$sV%3$sM0 %4$sV%6$s\""
            + " stroke=\"currentColor\" stroke-width=\"%7$s\" fill=\"none\"/>",
        -HALF_WIDTH, HALF_WIDTH, -KITCHEN, KITCHEN, -HALF_LENGTH, HALF_LENGTH, LINE);
    append(
        "<path d=\"M%s 0H%s\" stroke=\"currentColor\" stroke-width=\"0.8\" fill=\"none\"/>",
        -NET_REACH, NET_REACH);
  }

  /** The line of play between two places, with an arrow head at each end. */
  void play(CourtPoint from, CourtPoint to) {
    double[] start = onPaper(from);
    double[] end = onPaper(to);
    double length = Math.hypot(end[0] - start[0], end[1] - start[1]);
    double[] unit = {(end[0] - start[0]) / length, (end[1] - start[1]) / length};
    double[] tail = {start[0] + BLOCK * unit[0], start[1] + BLOCK * unit[1]};
    double[] head = {end[0] - BLOCK * unit[0], end[1] - BLOCK * unit[1]};
    append(
        "<path d=\"M%s %sL%s %s\" stroke=\"currentColor\" stroke-width=\"0.3\""
            + " stroke-dasharray=\"1.1 0.7\" fill=\"none\"/>",
        tail[0], tail[1], head[0], head[1]);
    arrowHead(head, unit);
    arrowHead(tail, new double[] {-unit[0], -unit[1]});
  }

  /** A player as a block on a narrow ground, so that hatching does not touch it. */
  void player(CourtPoint place, Mark mark) {
    double[] at = onPaper(place);
    double rim = BLOCK + 0.9;
    append(
        "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"#ffffff\""
            + " class=\"court-ground\"/>",
        at[0] - rim / 2, at[1] - rim / 2, rim, rim);
    append(
        "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\" stroke=\"currentColor\""
            + " stroke-width=\"0.5\"/>",
        at[0] - BLOCK / 2,
        at[1] - BLOCK / 2,
        BLOCK,
        BLOCK,
        mark == Mark.SOLID ? "currentColor" : "none");
  }

  /** A box of tape: a thick outline on a narrow ground. */
  void box(Polygon area) {
    StringBuilder edge = new StringBuilder();
    for (CourtPoint corner : area.corners()) {
      double[] at = onPaper(corner);
      edge.append(text(edge.isEmpty() ? "M%s %s" : "L%s %s", at[0], at[1]));
    }
    append("<path d=\"%sz\" stroke=\"#ffffff\" stroke-width=\"0.9\" fill=\"none\"/>", edge);
    append("<path d=\"%sz\" stroke=\"currentColor\" stroke-width=\"0.4\" fill=\"none\"/>", edge);
  }

  /** A cross of tape. */
  void cross(CourtPoint place) {
    double[] at = onPaper(place);
    for (String ink :
        new String[] {"#ffffff\" stroke-width=\"0.9", "currentColor\" stroke-width=\"0.4"}) {
      append(
          "<path d=\"M%s %sl1.4 1.4m0 -1.4l-1.4 1.4\" stroke=\"%s\" fill=\"none\"/>",
          at[0] - 0.7, at[1] - 0.7, ink);
    }
  }

  /** A flat cone with its letter. */
  void cone(CourtPoint place, String letter) {
    double[] at = onPaper(place);
    append(
        "<circle cx=\"%s\" cy=\"%s\" r=\"1.05\" fill=\"#ffffff\" stroke=\"currentColor\""
            + " stroke-width=\"0.3\"/>",
        at[0], at[1]);
    append(
        "<text x=\"%s\" y=\"%s\" font-size=\"1.5\" text-anchor=\"middle\""
            + " fill=\"currentColor\">%s</text>",
        at[0], at[1] + 0.52, escaped(letter));
  }

  /** A word in the middle of a place; the ground shows round its letters. */
  void word(double rightFeet, double downFeet, String word) {
    String escaped = escaped(word);
    append(
        "<text x=\"%s\" y=\"%s\" font-size=\"1.9\" text-anchor=\"middle\" stroke=\"#ffffff\""
            + " stroke-width=\"0.9\" stroke-linejoin=\"round\" class=\"court-halo\""
            + " aria-hidden=\"true\">%s</text>",
        rightFeet, downFeet, escaped);
    append(
        "<text x=\"%s\" y=\"%s\" font-size=\"1.9\" text-anchor=\"middle\""
            + " fill=\"currentColor\">%s</text>",
        rightFeet, downFeet, escaped);
  }

  String shapes() {
    return shapes.toString();
  }

  /** Feet to the right of the centre line and feet down the paper from the net. */
  static double[] onPaper(CourtPoint point) {
    return new double[] {point.across().feet(), -point.along().feet()};
  }

  /** Text with its numbers to a hundredth of a foot. */
  static String text(String format, Object... values) {
    Object[] words = new Object[values.length];
    for (int place = 0; place < values.length; place++) {
      words[place] =
          values[place] instanceof Double number
              ? String.format(Locale.ROOT, "%.2f", number)
              : values[place];
    }
    return format.formatted(words);
  }

  /** Text that may stand in an attribute or an element. */
  static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  private void arrowHead(double[] tip, double[] unit) {
    double backX = tip[0] - ARROW * unit[0];
    double backY = tip[1] - ARROW * unit[1];
    double sideX = -unit[1] * ARROW * 0.4;
    double sideY = unit[0] * ARROW * 0.4;
    append(
        "<path d=\"M%s %sL%s %sL%s %sz\" fill=\"currentColor\"/>",
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

  private void append(String format, Object... values) {
    shapes.append(text(format, values));
  }
}
