package rallywright.engine.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The way round the post by geometry, and flights in vacuum along it. */
class RoundThePostTest {

  private static final double RADIUS = Ball.OUTDOOR.radiusM();
  private static final RoundThePost POST = RoundThePost.of(Ball.OUTDOOR);

  private static final Conditions VACUUM = new Conditions(Ball.OUTDOOR, Air.NONE, Wind.NONE);

  /** Similar triangles: the line past the post (11 ft + 3 in + r) into the corner at 22 ft. */
  @Test
  void narrowest_isOnTheLineFromTheCornerPastThePost() {
    double post = 11 * 0.3048 + 0.0762 + RADIUS;
    double slope = (post - 10 * 0.3048) / (22 * 0.3048);
    assertThat(POST.narrowest(-3)).isCloseTo(post + 3 * slope, within(1e-12));
    assertThat(POST.bearings(-3, POST.narrowest(-3) - 1e-6)).isEmpty();
    assertThat(POST.bearings(-3, POST.narrowest(-3) + 1e-6)).isPresent();
  }

  /** Flown in a vacuum: bearings within land in and pass the post, those without do not. */
  @ParameterizedTest
  @CsvSource({"-1, 3.9", "-2.5, 4.2", "-5, 5.0", "-6.7, 4.3"})
  void bearings_flownInAVacuum_areThoseThatGoRoundThePostAndIn(double x, double y) {
    RoundThePost.Bearings bearings = POST.bearings(x, y).orElseThrow();
    double inside = 0.02 * bearings.width();
    assertThat(anyFlight(x, y, bearings.nearestToStraight() - inside)).isTrue();
    assertThat(anyFlight(x, y, bearings.sharpest() + inside)).isTrue();
    assertThat(anyFlight(x, y, bearings.nearestToStraight() + inside)).isFalse();
    assertThat(anyFlight(x, y, bearings.sharpest() - inside)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"-1, 3.0", "-2.5, 3.5", "-6.7, 3.8"})
  void contact_tooNarrow_hasNoFlightRoundThePost(double x, double y) {
    assertThat(POST.bearings(x, y)).isEmpty();
    for (double bearing = -1; bearing <= 1; bearing += 0.05) {
      assertThat(anyFlight(x, y, bearing)).isFalse();
    }
  }

  /** The parabola that is low at the net, for many landing distances along the bearing. */
  private static boolean anyFlight(double x, double y, double bearing) {
    Target target =
        Target.of(
            new Requirement.RoundPost(Requirement.RoundPost.Side.LEFT),
            Requirement.LandsIn.court());
    Shot shot = new Shot(new Vector(x, y, 0.4), 0, target, VACUUM);
    ShotTrial trial = shot.trial();
    for (double elevation = 0.1; elevation < 0.8; elevation += 0.2) {
      for (double speed = 2; speed < 14; speed += 0.05) {
        if (trial.margin(speed, elevation, bearing) > 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** In a vacuum a ball sliding without friction goes on straight: width by similar triangles. */
  @Test
  void room_afterABounceWithoutFriction_isThatOfAParabola() {
    Ball slick =
        new Ball(0.0243, RADIUS, Ball.OUTDOOR.aero(), new Bounce(0.64, 0), Ball.OUTDOOR.source());
    Conditions vacuum = new Conditions(slick, Air.NONE, Wind.NONE);
    Vector velocity = new Vector(-3, 4, -3.5);
    double seconds = 2 * 0.64 * 3.5 / Conditions.GRAVITY;
    double early = (RoundThePost.LOWEST_CONTACT_M - RADIUS) / (0.64 * 3.5);
    double flown = seconds - early;
    double x = -1.2 - 3 * flown;
    double y = 2.4 + 4 * flown;
    double room =
        POST.room(new Launch(new Vector(-1.2, 2.4, RADIUS), velocity, Vector.ZERO), vacuum);
    assertThat(room).isCloseTo(y - POST.narrowest(x), within(1e-9));
  }

  @Test
  void narrowestBounce_ofASharperBall_liesNearerToTheMiddle() {
    double sharp =
        POST.narrowestBounce(-1.5, new Vector(-3, 4, -4), Conditions.CALM).orElseThrow().central();
    double wider =
        POST.narrowestBounce(-1.5, new Vector(-4, 2.5, -4), Conditions.CALM)
            .orElseThrow()
            .central();
    assertThat(sharp).isLessThan(wider).isGreaterThan(0.5);
    assertThat(POST.narrowestBounce(-1.5, new Vector(-5, 0.3, -4), Conditions.CALM)).isEmpty();
  }

  @Test
  void contact_beyondTheNet_isRefused() {
    assertThatThrownBy(() -> POST.bearings(0.5, 4)).hasMessageContaining("Maybe -3");
  }

  private static Conditions sideWind(Air air, double left) {
    return new Conditions(Ball.OUTDOOR, air, Wind.constant(0, left));
  }

  private static RoundThePost.Narrowest leftPost(double x, double height, Conditions conditions) {
    return POST.narrowest(Requirement.RoundPost.Side.LEFT, x, height, conditions).orElseThrow();
  }

  /** In a vacuum no wind pushes: the search among flights gives the line past the post. */
  @ParameterizedTest
  @CsvSource({"-0.5, 0.15", "-2, 0.4", "-4, 0.8", "-6.7, 0.3"})
  void search_inAVacuumAndInStillAir_isTheGeometry(double x, double height) {
    Conditions windInAVacuum = sideWind(Air.NONE, -6);
    assertThat(leftPost(x, height, windInAVacuum).across())
        .isCloseTo(POST.narrowest(x), within(1e-6));
    assertThat(leftPost(x, height, Conditions.CALM).across())
        .isCloseTo(POST.narrowest(x), within(1e-6));
  }

  /**
   * The launch that was found, flown by hand by the solver (checked elsewhere against an
   * independent integrator): its centre passes 11 ft + 3 in + r from the middle above the floor,
   * and it lands on the side line at 10 ft, at the baseline at the latest.
   */
  @ParameterizedTest
  @CsvSource({"-1, -4", "-1, 4", "-3, -2", "-3, 6", "-6, -3"})
  void launchFound_flownByHand_passesThePostAndLandsIn(double x, double wind) {
    Conditions conditions = sideWind(Conditions.CALM.air(), wind);
    RoundThePost.Narrowest way = leftPost(x, 0.3, conditions);
    Flight flight =
        FlightSolver.of(conditions).fly(Launch.of(new Vector(x, way.across(), 0.3), way.aim(), 0));
    Vector net = Objects.requireNonNull(flight.net()).ball().position();
    assertThat(net.y()).isCloseTo(11 * 0.3048 + 0.0762 + RADIUS, within(1e-5));
    assertThat(net.z()).isGreaterThanOrEqualTo(RADIUS);
    Vector landing = flight.landing().ball().position();
    assertThat(landing.y()).isCloseTo(10 * 0.3048, within(1e-5));
    assertThat(landing.x()).isBetween(0.0, 22 * 0.3048 + 1e-5);
  }

  /** Thousands of other launches from 5 cm narrower, by brute force: none gets round and in. */
  @ParameterizedTest
  @CsvSource({"-1, -4", "-3, 4"})
  void contact_narrowerThanFound_hasNoFlightRoundThePost(double x, double wind) {
    Conditions conditions = sideWind(Conditions.CALM.air(), wind);
    double found = leftPost(x, 0.3, conditions).across();
    assertThat(anyOf(x, found - 0.05, conditions)).isFalse();
    assertThat(anyOf(x, found + 0.15, conditions)).isTrue();
  }

  private static boolean anyOf(double x, double y, Conditions conditions) {
    Target target =
        Target.of(
            new Requirement.RoundPost(Requirement.RoundPost.Side.LEFT),
            Requirement.LandsIn.court());
    ShotTrial trial = new Shot(new Vector(x, y, 0.3), 0, target, conditions).trial();
    for (double elevation = -10; elevation <= CurvedPost.STEEPEST_DEGREES; elevation += 2.5) {
      for (double speed = 2.5; speed <= 28; speed *= 1.04) {
        for (double bearing = -1.2; bearing < 1.2; bearing += 0.02) {
          if (trial.margin(speed, Math.toRadians(elevation), bearing) > 0) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** By reflection in the centre line. */
  @Test
  void windFromTheLeftOnTheLeftPost_isWindFromTheRightOnTheRightPost() {
    Conditions fromTheLeft = sideWind(Conditions.CALM.air(), -4);
    Conditions fromTheRight = sideWind(Conditions.CALM.air(), 4);
    RoundThePost.Narrowest left = leftPost(-2, 0.4, fromTheLeft);
    RoundThePost.Narrowest right =
        POST.narrowest(Requirement.RoundPost.Side.RIGHT, -2, 0.4, fromTheRight).orElseThrow();
    assertThat(right.across()).isCloseTo(left.across(), within(1e-9));
    assertThat(right.aim().bearing()).isCloseTo(-left.aim().bearing(), within(1e-9));
    Launch falls = new Launch(new Vector(-1.5, 2.5, RADIUS), new Vector(-3, 3, -4), Vector.ZERO);
    Launch other = new Launch(new Vector(-1.5, -2.5, RADIUS), new Vector(-3, -3, -4), Vector.ZERO);
    assertThat(POST.room(other, fromTheRight))
        .isCloseTo(POST.room(falls, fromTheLeft), within(1e-9));
  }

  /** Wind into the court brings balls in; out of the court it takes them away. */
  @Test
  void windIntoTheCourt_needsALessWideBallThanStillAir() {
    Air air = Conditions.CALM.air();
    double into = leftPost(-2, 0.4, sideWind(air, -4)).across();
    double out = leftPost(-2, 0.4, sideWind(air, 4)).across();
    assertThat(into).isLessThan(POST.narrowest(-2) - 0.3);
    assertThat(out).isGreaterThan(POST.narrowest(-2));
  }

  /** One subtraction gives what room says at that bounce: nothing to spare. */
  @ParameterizedTest
  @CsvSource({"0", "-2", "2"})
  void narrowestBounce_hasNoRoomToSpare(double wind) {
    Conditions conditions = sideWind(Conditions.CALM.air(), wind);
    Vector velocity = new Vector(-3, 4, -4);
    double bounce = POST.narrowestBounce(-1.5, velocity, conditions).orElseThrow().central();
    Launch landing = new Launch(new Vector(-1.5, bounce, RADIUS), velocity, Vector.ZERO);
    assertThat(POST.room(landing, conditions)).isCloseTo(0, within(1e-6));
  }

  /** Without side wind it is geometry: nothing of the range is left. */
  @Test
  void narrowestLow_withoutSideWind_isTheSameForEveryBall() {
    Conditions against = new Conditions(Ball.OUTDOOR, Conditions.CALM.air(), Wind.constant(-4, 0));
    assertThat(POST.narrowestLow(-2, against)).contains(Ranged.always(POST.narrowest(-2)));
  }

  /** The other balls, sought around the first one's way, are where a search of their own ends. */
  @ParameterizedTest
  @CsvSource({"-1, -4", "-4, 4"})
  void narrowestLow_inSideWind_isThatOfSearchesOfTheirOwn(double x, double wind) {
    Conditions conditions = sideWind(Conditions.CALM.air(), wind);
    Ranged own =
        BallSpread.of(
                conditions,
                false,
                each -> leftPost(x, RoundThePost.LOWEST_CONTACT_M, each).across())
            .range(across -> across);
    Ranged found = POST.narrowestLow(x, conditions).orElseThrow();
    assertThat(found.low()).isCloseTo(own.low(), within(2e-3)).isLessThan(own.central() - 1e-3);
    assertThat(found.central()).isEqualTo(own.central());
    assertThat(found.high()).isCloseTo(own.high(), within(2e-3));
  }
}
