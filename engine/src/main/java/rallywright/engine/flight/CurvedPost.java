package rallywright.engine.flight;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rallywright.engine.court.Court;

/**
 * The narrowest place from which a ball that the wind curves can be played round the left post.
 *
 * <p>For the maintainer: a flight is the same wherever across the court it begins, so the place is
 * not searched. For an elevation and a distance of the landing, speed and bearing are found by
 * Newton's method so that the ball lands there and comes in, between net and landing, by just as
 * much as the post stands outside the side line; it is then hit as narrow as that elevation and
 * distance allow. What is left is the smallest over both, from a look at a grid and by halving
 * steps. Without side wind the elevation does not matter, the landing is at the baseline, and the
 * answer is that of the geometry.
 */
final class CurvedPost {

  /** Steeper lobs are left out: assumption of this project. */
  static final double STEEPEST_DEGREES = 60;

  private static final double LOWEST_DEGREES = -10;
  private static final int ELEVATIONS = 15;
  private static final int LANDINGS = 8;
  private static final double NEAREST_M = 0.3;
  private static final int ROUNDS = 14;
  private static final double NEAR_DEGREES = 1.5;
  private static final double NEAR_M = 0.3;
  private static final int NEAR_ROUNDS = 8;
  private static final int HALVINGS = 8;
  private static final int NEWTON = 12;
  private static final double DONE = 1e-9;
  private static final double SMALL = 1e-5;
  private static final double TOLERANCE = 1e-7;

  private final FlightSolver solver;
  private final double radius;
  private final double outside;
  private final double inward;
  private final double[] aim = new double[3];

  /** Tried: where it must be hit, and how. */
  private record Tried(double elevation, double landing, RoundThePost.Narrowest way) {}

  CurvedPost(Conditions conditions, double outside) {
    solver = FlightSolver.of(conditions).withTolerance(TOLERANCE);
    radius = conditions.ball().radiusM();
    this.outside = outside;
    inward = outside - Court.HALF_WIDTH.metres();
  }

  Optional<RoundThePost.Narrowest> narrowest(double x, double height) {
    Vector contact = new Vector(x, 0, height);
    @Nullable Tried best = null;
    double upStep = Math.toRadians(STEEPEST_DEGREES - LOWEST_DEGREES) / (ELEVATIONS - 1);
    double landStep = (Court.HALF_LENGTH.metres() - NEAREST_M) / (LANDINGS - 1);
    for (int i = 0; i < ELEVATIONS; i++) {
      for (int j = 0; j < LANDINGS; j++) {
        double up = Math.toRadians(LOWEST_DEGREES) + i * upStep;
        @Nullable Tried next = tried(contact, up, NEAREST_M + j * landStep);
        best = best == null ? next : better(best, next);
      }
    }
    return Optional.ofNullable(best)
        .map(from -> narrowed(contact, from, new Steps(upStep / 2, landStep / 2, ROUNDS)));
  }

  /** The same for a ball that flies a little differently: sought around the way of another ball. */
  Optional<RoundThePost.Narrowest> like(RoundThePost.Narrowest way, double x, double height) {
    Vector contact = new Vector(x, 0, height);
    @Nullable Tried same = tried(contact, way.aim().elevation(), way.landing());
    return same == null
        ? narrowest(x, height)
        : Optional.of(
            narrowed(contact, same, new Steps(Math.toRadians(NEAR_DEGREES), NEAR_M, NEAR_ROUNDS)));
  }

  /** First steps, in radians and metres, and how often they are tried and halved. */
  private record Steps(double up, double landing, int rounds) {}

  private RoundThePost.Narrowest narrowed(Vector contact, Tried start, Steps steps) {
    Tried best = start;
    double up = steps.up();
    double land = steps.landing();
    for (int round = 0; round < steps.rounds(); round++) {
      Tried from = best;
      best = better(best, tried(contact, from.elevation() + up, from.landing()));
      best = better(best, tried(contact, from.elevation() - up, from.landing()));
      best = better(best, tried(contact, from.elevation(), from.landing() + land));
      best = better(best, tried(contact, from.elevation(), from.landing() - land));
      up /= 2;
      land /= 2;
    }
    return best.way();
  }

  private static Tried better(Tried one, @Nullable Tried other) {
    return other == null || other.way().across() >= one.way().across() ? one : other;
  }

  /** The ball of an elevation that lands at a distance; null if there is none. */
  private @Nullable Tried tried(Vector contact, double up, double landing) {
    boolean allowed =
        up <= Math.toRadians(STEEPEST_DEGREES) + SMALL
            && landing > 0
            && landing <= Court.HALF_LENGTH.metres() + DONE;
    if (!allowed) {
      return null;
    }
    aim[1] = up;
    aim[2] = Math.atan2(-inward, landing);
    return roughSpeed(contact, landing) && newton(contact, landing)
        ? new Tried(
            up,
            landing,
            new RoundThePost.Narrowest(
                outside - solver.net().y(), new LaunchAim(aim[0], up, aim[2]), landing))
        : null;
  }

  /** Leaves in the aim a speed that lands near there; false if no player's does. */
  private boolean roughSpeed(Vector contact, double landing) {
    double slow = LaunchBox.EVERY_SHOT.slowest();
    double fast = LaunchBox.EVERY_SHOT.fastest();
    aim[0] = fast;
    fly(contact);
    if (solver.landing().x() < landing) {
      return false;
    }
    for (int halving = 0; halving < HALVINGS; halving++) {
      aim[0] = (slow + fast) / 2;
      fly(contact);
      if (solver.landing().x() < landing) {
        slow = aim[0];
      } else {
        fast = aim[0];
      }
    }
    aim[0] = fast;
    return true;
  }

  /** Speed and bearing for a landing and a way inward; the solver keeps the last flight. */
  private boolean newton(Vector contact, double landing) {
    for (int round = 0; round < NEWTON; round++) {
      double far = far(contact) - landing;
      double in = comesIn() - inward;
      if (Math.hypot(far, in) < DONE) {
        return solver.net().known() && solver.net().z() >= radius;
      }
      double speed = aim[0];
      double bearing = aim[2];
      aim[0] = speed * (1 + SMALL);
      double farBySpeed = (far(contact) - landing - far) / (speed * SMALL);
      double inBySpeed = (comesIn() - inward - in) / (speed * SMALL);
      aim[0] = speed;
      aim[2] = bearing + SMALL;
      double farByBearing = (far(contact) - landing - far) / SMALL;
      double inByBearing = (comesIn() - inward - in) / SMALL;
      double area = farBySpeed * inByBearing - farByBearing * inBySpeed;
      aim[0] = speed - (far * inByBearing - in * farByBearing) / area;
      aim[2] = bearing - (in * farBySpeed - far * inBySpeed) / area;
      boolean sound =
          aim[0] > LaunchBox.EVERY_SHOT.slowest() / 2
              && aim[0] <= LaunchBox.EVERY_SHOT.fastest()
              && Math.abs(aim[2]) < Math.PI / 2;
      if (!sound) {
        return false;
      }
    }
    return false;
  }

  private double far(Vector contact) {
    fly(contact);
    return solver.landing().x();
  }

  /** By how much the last ball came in between the net and its landing; nothing before the net. */
  private double comesIn() {
    return solver.net().known() ? solver.net().y() - solver.landing().y() : 0;
  }

  private void fly(Vector contact) {
    solver.run(contact, 0, aim);
  }
}
