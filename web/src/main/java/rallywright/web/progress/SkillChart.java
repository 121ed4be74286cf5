package rallywright.web.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import rallywright.engine.reading.SkillReading;
import rallywright.engine.reading.SkillReading.WeekPoint;

/**
 * The weeks of a skill as a band (80 %) with a line in it and a dot for each week with scores, in a
 * box of 320 × 112 whose plot leaves room for the scale and the dates.
 *
 * @param band the outline of the band for a polygon
 * @param line the points of the middle for a polyline
 * @param dots where the weeks stand
 * @param days the weeks
 * @param words what the picture shows, for those who do not see it
 */
public record SkillChart(String band, String line, List<Dot> dots, Days days, String words) {

  /** The left end of the plot. */
  public static final double LEFT = 30;

  /** The right end of the plot. */
  public static final double RIGHT = 312;

  private static final double TOP = 6;
  private static final double BOTTOM = 88;
  private static final double LOWEST = 0.1;
  private static final double HIGHEST = 0.9;

  /** Copies the list. */
  public SkillChart {
    dots = List.copyOf(dots);
  }

  /**
   * A week with scores.
   *
   * @param x to the right
   * @param y down
   */
  public record Dot(String x, String y) {}

  static SkillChart of(SkillReading reading) {
    List<WeekPoint> points = reading.course();
    Days days = Days.of(points);
    List<String> middle = new ArrayList<>();
    List<String> upper = new ArrayList<>();
    List<String> lower = new ArrayList<>();
    List<Dot> dots = new ArrayList<>();
    for (WeekPoint point : points) {
      String x = x(days.part(point.monday()));
      String y = y(reading.shareAt(point.estimate().mean()));
      middle.add(x + "," + y);
      upper.add(x + "," + y(reading.shareAt(point.estimate().high80())));
      lower.add(x + "," + y(reading.shareAt(point.estimate().low80())));
      dots.add(new Dot(x, y));
    }
    Collections.reverse(lower);
    upper.addAll(lower);
    WeekPoint first = points.get(0);
    String words =
        "From about "
            + SkillWords.ten(reading.shareAt(first.estimate().mean()))
            + " rallies in 10 in the week of "
            + SkillWords.DAY.format(first.monday())
            + " to about "
            + SkillWords.ten(reading.share())
            + " now.";
    return new SkillChart(String.join(" ", upper), String.join(" ", middle), dots, days, words);
  }

  /** Whether there are two weeks to draw a line between. */
  public boolean isDrawn() {
    return days.span();
  }

  /** Where a day stands. */
  public static String x(Days days, LocalDate day) {
    return x(days.part(day));
  }

  /** Where a part of the way from the first to the last week stands. */
  public static String x(double part) {
    return number(LEFT + part * (RIGHT - LEFT));
  }

  /** Where a share of rallies stands; beyond the scale it is drawn at the end. */
  public static String y(double share) {
    double part = (share - LOWEST) / (HIGHEST - LOWEST);
    return number(TOP + (BOTTOM - TOP) * (1 - Math.max(0, Math.min(1, part))));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
