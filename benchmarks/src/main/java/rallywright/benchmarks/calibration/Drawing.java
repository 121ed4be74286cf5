package rallywright.benchmarks.calibration;

import java.util.Locale;

/** An SVG picture that grows shape by shape; lengths in pixels from the upper left. */
final class Drawing {
  static final String INK = "#22313f";
  static final String PALE = "#6b7a86";
  static final String BAND = "#e3ebe8";
  static final String MARK = "#2a7f78";
  static final String FAULT = "#b3541e";

  /** Where a text is anchored. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  private final StringBuilder shapes = new StringBuilder();

  Drawing(int width, int height, String title) {
    add(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\""
            + " font-family=\"sans-serif\" font-size=\"13\">",
        width, height);
    add("<title>%s</title>", title);
    box(new Box(0, 0, width, height), "#ffffff");
  }

  /** A rectangle. */
  record Box(double x, double y, double width, double height) {}

  private void add(String format, Object... values) {
    shapes.append(String.format(Locale.ROOT, format, values)).append('\n');
  }

  void box(Box box, String colour) {
    add(
        "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\"/>",
        box.x, box.y, box.width, box.height, colour);
  }

  /** A level or upright line is a thin box; this one is for whiskers and axes. */
  void line(Box fromBy, String colour) {
    add(
        "<path d=\"M%.1f %.1fl%.1f %.1f\" stroke=\"%s\" stroke-width=\"1.5\"/>",
        fromBy.x, fromBy.y, fromBy.width, fromBy.height, colour);
  }

  void dot(double x, double y, String colour) {
    add("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\"/>", x, y, colour);
  }

  void text(double x, double y, Anchor anchor, String colour, String words) {
    add(
        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>",
        x, y, anchor.name().toLowerCase(Locale.ROOT), colour, words);
  }

  String svg() {
    return shapes + "</svg>\n";
  }
}
