package rallywright.engine.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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
    double sharp = POST.narrowestBounce(-1.5, new Vector(-3, 4, -4), Conditions.CALM).orElseThrow();
    double wider =
        POST.narrowestBounce(-1.5, new Vector(-4, 2.5, -4), Conditions.CALM).orElseThrow();
    assertThat(sharp).isLessThan(wider).isGreaterThan(0.5);
    assertThat(POST.narrowestBounce(-1.5, new Vector(-5, 0.3, -4), Conditions.CALM)).isEmpty();
  }

  @Test
  void contact_beyondTheNet_isRefused() {
    assertThatThrownBy(() -> POST.bearings(0.5, 4)).hasMessageContaining("Maybe -3");
  }
}
