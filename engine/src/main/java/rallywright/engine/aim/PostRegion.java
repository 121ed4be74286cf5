package rallywright.engine.aim;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rallywright.engine.aim.ShotSetting.Day;
import rallywright.engine.flight.Conditions;
import rallywright.engine.flight.Ranged;
import rallywright.engine.flight.RoundThePost;
import rallywright.engine.flight.Vector;

/**
 * From how wide a ball can be played round either post, by its distance from the net.
 *
 * <p><b>Card.</b> In: the day, and how sharply a dink comes across. Out: how wide the ball must be
 * where it is hit, and how wide it must bounce to get there before it bounces again, both with the
 * range of the balls. Limits: those of {@link RoundThePost}; the ball is picked up 15 cm above the
 * floor; a dink comes down at 3.5 m/s and moves over the floor at 4 m/s, both assumptions of this
 * project.
 *
 * @param left as the hitter sees it
 * @param right as the hitter sees it
 */
public record PostRegion(List<Row> left, List<Row> right) {

  private static final double FOOT = 0.3048;
  private static final double[] FEET = {1, 2, 3, 4, 5, 6, 7, 9, 12, 16, 20};
  private static final double OVER_THE_FLOOR = 4;
  private static final double DOWN = 3.5;

  /** Copies the lists. */
  public PostRegion {
    left = List.copyOf(left);
    right = List.copyOf(right);
  }

  /**
   * One distance from the net.
   *
   * @param fromNet in metres
   * @param contact how wide the ball must be where it is hit so far from the net, in metres from
   *     the middle; empty if there is no way, without ends if there is none with some of the balls
   * @param bounce how wide it must bounce so far from the net, in metres from the middle and inside
   *     the side line; empty if no such bounce hands one over, without ends if none does with some
   *     of the balls
   */
  public record Row(double fromNet, Optional<Ranged> contact, Optional<Ranged> bounce) {}

  /**
   * The region of a day.
   *
   * @param day ball, wind and air
   * @param angle of a dink that comes across, in radians from straight, above 0 and below π/2
   * @return both sides
   */
  public static PostRegion of(Day day, double angle) {
    Conditions conditions = day.conditions();
    return new PostRegion(side(conditions, angle), side(conditions.mirrored(), angle));
  }

  private static List<Row> side(Conditions conditions, double angle) {
    RoundThePost post = RoundThePost.of(conditions.ball());
    Vector velocity =
        new Vector(-OVER_THE_FLOOR * Math.cos(angle), OVER_THE_FLOOR * Math.sin(angle), -DOWN);
    return Arrays.stream(FEET)
        .mapToObj(
            feet ->
                new Row(
                    feet * FOOT,
                    post.narrowestLow(-feet * FOOT, conditions),
                    post.narrowestBounce(-feet * FOOT, velocity, conditions)))
        .toList();
  }
}
