package rallywright.engine.flight;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rallywright.engine.court.Court;

/**
 * Balls played round the post: when a ball bounced so wide that it may legally pass beside the net.
 *
 * <p><b>Card.</b> In: where a ball is hit, or how it bounces. Out: whether a straight path leads
 * outside the post into the opponents' court, and its bearings; in side wind, how wide a ball must
 * be hit so that a curved one does. Seen from above a ball without sidespin and side wind flies
 * straight, so it is geometry whatever the drag: outside the post by its radius at the net, inside
 * the side line where it lands, at the baseline at the latest. In side wind the flights themselves
 * are searched ({@link CurvedPost}). Such a ball may pass lower than the net (2025 rules, section
 * on the net). Limits: no sidespin; in side wind nothing lofted more than {@link
 * CurvedPost#STEEPEST_DEGREES}°.
 */
public final class RoundThePost {

  /** Thickness of a post: 3 in at the most (2025 rules, section on posts; from memory). */
  public static final double POST_M = 0.0762;

  /**
   * The lowest place at which a ball is still picked up: about 6 in; assumption of this project.
   */
  public static final double LOWEST_CONTACT_M = 0.15;

  private static final double NO_SIDE_WIND_MPS = 1e-3;

  private final double outside;
  private final double radius;

  private RoundThePost(Ball ball) {
    radius = ball.radiusM();
    outside = outside(radius);
  }

  /**
   * The question for a ball.
   *
   * @param ball its size
   * @return the question
   */
  public static RoundThePost of(Ball ball) {
    return new RoundThePost(ball);
  }

  /**
   * Whether a ball flies straight seen from above: there is no side wind to speak of, so that the
   * way round a post is geometry and the same for every ball.
   *
   * @param conditions ball, air and wind
   * @return true below a millimetre per second
   */
  public static boolean fliesStraight(Conditions conditions) {
    return Math.abs(conditions.wind().velocity().y()) < NO_SIDE_WIND_MPS;
  }

  /** How far from the middle a ball's centre must pass the net plane, in metres. */
  static double outside(double radius) {
    return Court.BETWEEN_POSTS.metres() / 2 + POST_M + radius;
  }

  /**
   * The bearings that lead round the post into the court, for a ball hit on the hitter's left.
   *
   * @param x where it is hit, in metres beyond the net: below 0
   * @param y metres to the left of the middle; mirror it for the right
   * @return the bearings in radians, nearest to straight first; empty if none leads there
   */
  public Optional<Bearings> bearings(double x, double y) {
    if (!(x < 0)) {
      throw new IllegalArgumentException(
          "The ball must be hit before the net: %s m is not below 0. Maybe -3.".formatted(x));
    }
    double pastThePost = Math.atan2(outside - y, -x);
    double intoTheCorner =
        Math.atan2(Court.HALF_WIDTH.metres() - y, Court.HALF_LENGTH.metres() - x);
    return pastThePost <= intoTheCorner
        ? Optional.of(new Bearings(intoTheCorner, pastThePost))
        : Optional.empty();
  }

  /**
   * Bearings in radians to the hitter's left; both below 0 for a ball hit on the left.
   *
   * @param nearestToStraight into the far corner
   * @param sharpest just past the post
   */
  public record Bearings(double nearestToStraight, double sharpest) {

    /**
     * How much room there is.
     *
     * @return radians
     */
    public double width() {
      return nearestToStraight - sharpest;
    }
  }

  /**
   * How wide a ball must be hit for a way round the post.
   *
   * @param x where it is hit, in metres beyond the net: below 0
   * @return metres from the middle
   */
  public double narrowest(double x) {
    double slope = (outside - Court.HALF_WIDTH.metres()) / Court.HALF_LENGTH.metres();
    return outside - x * slope;
  }

  /**
   * The narrowest place from which a ball can be played round a post, and the launch that does it.
   *
   * @param across metres from the middle, on the side of that post
   * @param aim speed and angles as the hitter sees them
   * @param landing how far beyond the net it lands, in metres
   */
  public record Narrowest(double across, LaunchAim aim, double landing) {}

  /**
   * How wide a ball must be hit for a way round a post in any wind, searched among flights.
   *
   * @param post which post, as the hitter sees it
   * @param x where it is hit, in metres beyond the net: below 0
   * @param height of the ball's centre where it is hit, in metres
   * @param conditions ball, air and wind; the ball's size is that of this question
   * @return the place and the launch; empty if no launch of a player gets there
   */
  public Optional<Narrowest> narrowest(
      Requirement.RoundPost.Side post, double x, double height, Conditions conditions) {
    if (!(x < 0 && height > radius)) {
      throw new IllegalArgumentException(
          ("The ball must be hit before the net (%s m is not below 0) and above the floor (%s m)."
                  + " Maybe -3 and 0.3.")
              .formatted(x, height));
    }
    boolean left = post == Requirement.RoundPost.Side.LEFT;
    Optional<Narrowest> found =
        new CurvedPost(left ? conditions : conditions.mirrored(), outside).narrowest(x, height);
    return left ? found : found.map(RoundThePost::mirrored);
  }

  private static Narrowest mirrored(Narrowest left) {
    LaunchAim aim = left.aim();
    return new Narrowest(
        left.across(), new LaunchAim(aim.speed(), aim.elevation(), -aim.bearing()), left.landing());
  }

  /**
   * Whether a ball that bounces hands one over: carried on after the bounce, it comes to where it
   * can be played round the post before it bounces again.
   *
   * @param landing the ball as it lands on the hitter's side, in the hitter's frame
   * @param conditions ball, air and wind
   * @return the width to spare at the last moment, in metres; below 0 there is no way round
   */
  public double room(Launch landing, Conditions conditions) {
    Vector at = lastContact(landing, conditions);
    Requirement.RoundPost.Side post =
        at.y() < 0 ? Requirement.RoundPost.Side.RIGHT : Requirement.RoundPost.Side.LEFT;
    return Math.abs(at.y()) - narrowestLow(post, at.x(), conditions);
  }

  /** Where the ball is picked up at the last moment after its bounce. */
  private Vector lastContact(Launch landing, Conditions conditions) {
    Launch leaves = conditions.ball().bounce().after(landing, radius);
    Launch last = FlightSolver.of(conditions).fly(leaves).landing().ball();
    double early = Math.max(0, LOWEST_CONTACT_M - radius) / -last.velocity().z();
    return last.position().plus(last.velocity().times(-early));
  }

  /** The narrowest place of a ball picked up low; infinite beyond the net or without a way. */
  private double narrowestLow(Requirement.RoundPost.Side post, double x, Conditions conditions) {
    boolean left = post == Requirement.RoundPost.Side.LEFT;
    return new LowBalls().narrowest(x, left ? conditions : conditions.mirrored());
  }

  /**
   * Round the left post, picked up low, ball after ball: the first ball's way guides the search for
   * the others.
   */
  private final class LowBalls {
    private @Nullable Narrowest guide;

    /** Metres left of the middle; infinite beyond the net or without a way. */
    double narrowest(double x, Conditions conditions) {
      if (!(x < 0)) {
        return Double.POSITIVE_INFINITY;
      }
      if (fliesStraight(conditions)) {
        return RoundThePost.this.narrowest(x);
      }
      CurvedPost post = new CurvedPost(conditions, outside);
      @Nullable Narrowest like = guide;
      Optional<Narrowest> way =
          like == null ? post.narrowest(x, LOWEST_CONTACT_M) : post.like(like, x, LOWEST_CONTACT_M);
      guide = like == null ? way.orElse(null) : like;
      return way.map(Narrowest::across).orElse(Double.POSITIVE_INFINITY);
    }
  }

  /**
   * How wide a ball picked up low must be hit for a way round the left post, with the range of the
   * balls; without side wind it is geometry, and all balls are alike.
   *
   * @param x where it is hit, in metres beyond the net: below 0
   * @param conditions ball, air and wind
   * @return metres left of the middle; empty if there is no way, without ends if not for every ball
   */
  public Optional<Ranged> narrowestLow(double x, Conditions conditions) {
    LowBalls balls = new LowBalls();
    return known(BallSpread.of(conditions, false, each -> balls.narrowest(x, each)));
  }

  /**
   * The narrowest bounce that hands a ball over at the left post, for dinks of one kind at one
   * distance, with the range of the balls. A flight is the same wherever across the court it
   * begins, so it is one subtraction.
   *
   * @param x where it bounces, in metres beyond the net: below 0
   * @param velocity how it lands, in the hitter's frame, drifting to the left
   * @param conditions ball, air and wind
   * @return metres left of the middle, inside the court; empty if even one on the line is no gift,
   *     without ends if it is none with some of the balls
   */
  public Optional<Ranged> narrowestBounce(double x, Vector velocity, Conditions conditions) {
    Launch landing = new Launch(new Vector(x, 0, radius), velocity, Vector.ZERO);
    LowBalls balls = new LowBalls();
    return known(
            BallSpread.of(
                conditions,
                false,
                each -> {
                  Vector at = lastContact(landing, each);
                  return Math.max(0, balls.narrowest(at.x(), each) - at.y());
                }))
        .filter(least -> least.central() <= Court.HALF_WIDTH.metres());
  }

  private static Optional<Ranged> known(BallSpread<Double> places) {
    return Double.isFinite(places.central())
        ? Optional.of(places.range(each -> Double.isFinite(each) ? each : Double.NaN))
        : Optional.empty();
  }
}
