package rallywright.web.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rallywright.engine.aim.PostRegion;
import rallywright.engine.aim.RangeWords;
import rallywright.engine.aim.ShotSetting.Day;
import rallywright.engine.court.Court;
import rallywright.engine.flight.Ranged;
import rallywright.engine.flight.RoundThePost;
import rallywright.web.page.Units;

/**
 * Round the post as its page shows it; pictures in feet, the hitter's half below the net.
 *
 * @param sides the left post and the right one
 * @param balls what it matters which ball it is
 */
public record PostView(List<Side> sides, String balls) {

  private static final double FOOT = Units.METRES_PER_FOOT;

  /** The distances from the net that the sentences speak of, in feet. */
  private static final double HIT_FEET = 3;

  private static final double BOUNCE_FEET = 5;
  private static final double WITHIN_SIGHT_FEET = 15.5;
  private static final double SEEN_FEET = 1;

  /** Copies the list. */
  public PostView {
    sides = List.copyOf(sides);
  }

  /**
   * One post.
   *
   * @param contact the line that the ball must be hit outside of
   * @param spread the same line for balls that drag less and more; empty where they do not matter
   * @param bounce the outline of bounces that hand one over, empty where none does
   * @param sentence what a coach can say
   */
  public record Side(String contact, String spread, String bounce, String sentence) {}

  static PostView of(Day day, double degrees, Units units) {
    PostRegion region = PostRegion.of(day, Math.toRadians(degrees));
    boolean straight = RoundThePost.fliesStraight(day.conditions());
    return new PostView(
        List.of(
            side("left", region.left(), degrees, units),
            side("right", region.right(), degrees, units)),
        straight
            ? "There is no side wind: a ball that the air slows more still flies straight, seen"
                + " from above, so where it must be hit is the same for every ball. How far a dink"
                + " carries after its bounce is not: brackets hold four balls in five."
            : "Balls differ in how much the air slows them, and the side wind then carries them"
                + " more or less: brackets hold four balls in five, as do the dashed lines where"
                + " there is room for them.");
  }

  private static Side side(String post, List<PostRegion.Row> rows, double degrees, Units units) {
    int sign = post.equals("left") ? -1 : 1;
    return new Side(
        contact(rows, sign, Ranged::central),
        isSeen(rows) ? contact(rows, sign, Ranged::low) + contact(rows, sign, Ranged::high) : "",
        bounce(rows, sign),
        sentence(post, rows, degrees, units));
  }

  /** Whether the range is wider than the line that is drawn for it. */
  private static boolean isSeen(List<PostRegion.Row> rows) {
    return rows.stream()
        .flatMap(row -> row.contact().stream())
        .anyMatch(wide -> wide.high() - wide.low() > SEEN_FEET * FOOT);
  }

  private static String contact(
      List<PostRegion.Row> rows, int sign, ToDoubleFunction<Ranged> which) {
    List<String> points = new ArrayList<>();
    for (PostRegion.Row row : rows) {
      double wide = row.contact().map(which::applyAsDouble).orElse(Double.NaN);
      if (wide / FOOT < WITHIN_SIGHT_FEET) {
        points.add(point(sign * wide, row.fromNet()));
      }
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
        points.add(point(sign * row.bounce().get().central(), row.fromNet()));
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
    return hit.contact()
            .map(
                wide ->
                    "Round the %s post: hit %s behind the net, the ball must be %s."
                        .formatted(post, units.length(hit.fromNet()), wide(wide, units)))
            .orElse(
                "Round the %s post nothing gets in from %s behind the net."
                    .formatted(post, units.length(hit.fromNet())))
        + bounced
            .bounce()
            .map(
                least ->
                    (" A dink that comes across at %.0f° and bounces %s from the net hands one over"
                            + " within %s of the %s side line%s.")
                        .formatted(
                            degrees,
                            units.length(bounced.fromNet()),
                            inside(least, units),
                            post,
                            withSome(least)))
            .orElse(
                " No dink that comes across at %.0f° and bounces %s from the net hands one over."
                    .formatted(degrees, units.length(bounced.fromNet())));
  }

  private static String inside(Ranged least, Units units) {
    return RangeWords.with(
        fromLine(least, wide -> Court.HALF_WIDTH.metres() - wide),
        in -> units.length(Math.max(0, in)));
  }

  private static String wide(Ranged contact, Units units) {
    Ranged out = fromLine(contact, wide -> wide - Court.HALF_WIDTH.metres());
    boolean oneSide = out.low() < 0 == out.high() < 0;
    String size =
        units.length(Math.abs(out.central()))
            + Optional.of(
                    RangeWords.range(
                        out,
                        each ->
                            units.length(Math.abs(each))
                                + (oneSide ? "" : each < 0 ? " inside" : " outside")))
                .filter(range -> !range.isEmpty())
                .map(range -> " (" + range + ")")
                .orElse("");
    return (out.central() >= 0
                ? "at least %s outside the side line"
                : "no more than %s inside the side line, and the wind brings it round")
            .formatted(size)
        + withSome(contact);
  }

  private static String withSome(Ranged number) {
    return number.isKnown() ? "" : "; with some balls there is no way";
  }

  /** Counted from the side line, the smaller end first. */
  private static Ranged fromLine(Ranged fromMiddle, Function<Double, Double> from) {
    double one = from.apply(fromMiddle.low());
    double other = from.apply(fromMiddle.high());
    return new Ranged(Math.min(one, other), from.apply(fromMiddle.central()), Math.max(one, other));
  }

  private static PostRegion.Row at(List<PostRegion.Row> rows, double feet) {
    return rows.stream()
        .filter(row -> Math.abs(row.fromNet() / FOOT - feet) < 0.01)
        .findFirst()
        .orElse(rows.get(0));
  }
}
