package rallywright.web.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rallywright.engine.aim.PostRegion;
import rallywright.engine.court.Court;
import rallywright.web.page.Units;

/**
 * Round the post as its page shows it; pictures in feet, the hitter's half below the net.
 *
 * @param contactLeft where the ball must be hit outside of, on the left
 * @param contactRight the same on the right
 * @param bounceLeft the outline of bounces that hand one over, empty where none does
 * @param bounceRight the same on the right
 * @param sentences for each post what a coach can say
 */
public record PostView(
    String contactLeft,
    String contactRight,
    String bounceLeft,
    String bounceRight,
    List<String> sentences) {

  private static final double FOOT = Units.METRES_PER_FOOT;

  /** The distances from the net that the sentences speak of, in feet. */
  private static final double HIT_FEET = 3;

  private static final double BOUNCE_FEET = 5;
  private static final double WITHIN_SIGHT_FEET = 15.5;

  static PostView of(PostRegion region, double degrees, Units units) {
    return new PostView(
        contact(region.left(), -1),
        contact(region.right(), 1),
        bounce(region.left(), -1),
        bounce(region.right(), 1),
        List.of(
            sentence("left", region.left(), degrees, units),
            sentence("right", region.right(), degrees, units)));
  }

  private static String contact(List<PostRegion.Row> rows, int sign) {
    List<String> points = new ArrayList<>();
    for (PostRegion.Row row : rows) {
      row.contact()
          .ifPresent(
              wide -> {
                if (wide / FOOT < WITHIN_SIGHT_FEET) {
                  points.add(point(sign * wide, row.fromNet()));
                }
              });
    }
    return points.isEmpty() ? "" : "M" + String.join("L", points);
  }

  private static String bounce(List<PostRegion.Row> rows, int sign) {
    double line = Court.HALF_WIDTH.metres();
    List<String> points = new ArrayList<>();
    double last = 0;
    for (PostRegion.Row row : rows) {
      if (row.bounce().isPresent()) {
        if (points.isEmpty()) {
          points.add(point(sign * line, row.fromNet()));
        }
        points.add(point(sign * row.bounce().getAsDouble(), row.fromNet()));
        last = row.fromNet();
      }
    }
    if (points.isEmpty()) {
      return "";
    }
    points.add(point(sign * line, last));
    return "M" + String.join("L", points) + "z";
  }

  private static String point(double across, double fromNet) {
    return ShotPicture.number(across / FOOT) + " " + ShotPicture.number(fromNet / FOOT);
  }

  private static String sentence(
      String post, List<PostRegion.Row> rows, double degrees, Units units) {
    PostRegion.Row hit = at(rows, HIT_FEET);
    PostRegion.Row bounced = at(rows, BOUNCE_FEET);
    String first =
        hit.contact().isPresent()
            ? "Round the %s post: hit %s behind the net, the ball must be %s."
                .formatted(post, units.length(hit.fromNet()), wide(hit.contact(), units))
            : "Round the %s post nothing gets in from %s behind the net."
                .formatted(post, units.length(hit.fromNet()));
    return first
        + (bounced.bounce().isPresent()
            ? (" A dink that comes across at %.0f° and bounces %s from the net hands one over"
                    + " within %s of the %s side line.")
                .formatted(
                    degrees,
                    units.length(bounced.fromNet()),
                    units.length(Court.HALF_WIDTH.metres() - bounced.bounce().getAsDouble()),
                    post)
            : " No dink that comes across at %.0f° and bounces %s from the net hands one over."
                .formatted(degrees, units.length(bounced.fromNet())));
  }

  private static String wide(OptionalDouble contact, Units units) {
    double out = contact.getAsDouble() - Court.HALF_WIDTH.metres();
    return out >= 0
        ? "at least %s outside the side line".formatted(units.length(out))
        : "no more than %s inside the side line, and the wind brings it round"
            .formatted(units.length(-out));
  }

  private static PostRegion.Row at(List<PostRegion.Row> rows, double feet) {
    return rows.stream()
        .filter(row -> Math.abs(row.fromNet() / FOOT - feet) < 0.01)
        .findFirst()
        .orElse(rows.get(0));
  }
}
