package rallywright.web.progress;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import rallywright.engine.reading.SkillReading;
import rallywright.engine.reading.SkillReading.WeekPoint;

/**
 * The weeks of a skill as a band (80 %) with a line in it, in a box of 320 × 80.
 *
 * @param band the outline of the band for a polygon
 * @param line the points of the middle for a polyline
 * @param from the first week in words
 * @param words what the picture shows, for those who do not see it
 */
public record CoursePicture(String band, String line, String from, String words) {

  private static final double WIDTH = 320;
  private static final double HEIGHT = 80;
  private static final double LOWEST = 0.1;
  private static final double HIGHEST = 0.9;

  /** Whether there are two weeks to draw a line between. */
  public boolean isDrawn() {
    return !line.isEmpty();
  }

  static CoursePicture of(SkillReading reading) {
    List<WeekPoint> points = reading.course();
    WeekPoint first = points.get(0);
    WeekPoint last = points.get(points.size() - 1);
    long days = ChronoUnit.DAYS.between(first.monday(), last.monday());
    if (days == 0) {
      return new CoursePicture("", "", "", "");
    }
    List<String> middle = new ArrayList<>();
    List<String> upper = new ArrayList<>();
    List<String> lower = new ArrayList<>();
    for (WeekPoint point : points) {
      double x = WIDTH * ChronoUnit.DAYS.between(first.monday(), point.monday()) / days;
      middle.add(at(x, reading.shareAt(point.estimate().mean())));
      upper.add(at(x, reading.shareAt(point.estimate().high80())));
      lower.add(at(x, reading.shareAt(point.estimate().low80())));
    }
    Collections.reverse(lower);
    upper.addAll(lower);
    String words =
        "From about "
            + SkillWords.ten(reading.shareAt(first.estimate().mean()))
            + " rallies in 10 in the week of "
            + SkillWords.DAY.format(first.monday())
            + " to about "
            + SkillWords.ten(reading.share())
            + " now.";
    return new CoursePicture(
        String.join(" ", upper),
        String.join(" ", middle),
        SkillWords.DAY.format(first.monday()),
        words);
  }

  private static String at(double x, double share) {
    double part = (share - LOWEST) / (HIGHEST - LOWEST);
    double y = HEIGHT * (1 - Math.max(0, Math.min(1, part)));
    return String.format(Locale.ROOT, "%.1f,%.1f", x, y);
  }
}
