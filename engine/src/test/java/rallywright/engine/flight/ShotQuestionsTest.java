package rallywright.engine.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What a coach asks of a shot: time, lines, scatter, and how sure the answer is. */
class ShotQuestionsTest {

  private static final double MPH = 0.44704;

  private static Shot shot(double y, Requirement.LandsIn place) {
    return new Shot(
        new Vector(-6.7056, y, 0.7),
        0,
        Target.of(new Requirement.ClearsNet(0), place, Requirement.NotAttackable.AT_THE_LINE),
        Conditions.CALM);
  }

  @Test
  void opponent_atTheLine_hasLessTimeTheNearerTheHitter() {
    double near = Opponent.READY.fastestToCounter(2.1, Conditions.CALM);
    double far = Opponent.READY.fastestToCounter(6.7, Conditions.CALM);
    assertThat(far).isGreaterThan(near * 1.5);
    assertThat(Opponent.CHOOSING.fastestToCounter(2.1, Conditions.CALM)).isLessThan(near);
    assertThat(near / MPH).isBetween(20.0, 60.0);
  }

  /** At just that pace nothing is left; the solver with gravity agrees with the straight line. */
  @Test
  void timeLeft_atTheFastestPace_isNothing() {
    double pace = Opponent.READY.fastestToCounter(2.1336, Conditions.CALM);
    double reach = 2.1336 - Requirement.NotAttackable.ARM_M;
    Launch flat = Launch.of(new Vector(-2.1336, 0, 1.2), LaunchAim.degrees(pace, 2, 0), 0);
    TimeLeft left = Opponent.READY.against(flat, Conditions.CALM, reach);
    assertThat(left.met()).isEqualTo(TimeLeft.Met.IN_THE_AIR);
    assertThat(left.spareSeconds()).isCloseTo(0, within(1e-3));
    Launch soft = Launch.of(new Vector(-2.1336, 0, 0.5), LaunchAim.degrees(5.5, 40, 0), 0);
    TimeLeft slow = Opponent.READY.against(soft, Conditions.CALM, reach);
    assertThat(slow.stepM()).isCloseTo(2 * slow.spareSeconds(), within(1e-12)).isGreaterThan(0.5);
  }

  @Test
  void timeLeft_ofABallThatLandsFirst_isThatToTheLanding() {
    Launch drop = Launch.of(new Vector(-2, 0, 0.4), LaunchAim.degrees(4.6, 45, 0), 0);
    TimeLeft left = Opponent.READY.against(drop, Conditions.CALM, 1.5);
    assertThat(left.met()).isEqualTo(TimeLeft.Met.AFTER_THE_BOUNCE);
    assertThat(left.ball().ball().position().z()).isCloseTo(Ball.OUTDOOR.radiusM(), within(1e-9));
  }

  /** Court geometry by hand: 22 + 7 ft, 20 ft across, net 36 in at the side line and 34 in mid. */
  @Test
  void crossCourtLine_isLongerAndCrossesLower() {
    ShotLine straight =
        ShotLine.of(
            shot(-3.048, Requirement.LandsIn.kitchen()), new BestAim.Landing(2.1336, -3.048));
    ShotLine cross =
        ShotLine.of(
            shot(-3.048, Requirement.LandsIn.kitchen()), new BestAim.Landing(6.7056, 3.048));
    assertThat(straight.distance()).isCloseTo(29 * 0.3048, within(1e-9));
    assertThat(straight.netHeight()).isCloseTo(36 * 0.0254, within(1e-9));
    assertThat(straight.courtBehind()).isCloseTo(22 * 0.3048, within(1e-9));
    assertThat(cross.distance()).isCloseTo(Math.hypot(44, 20) * 0.3048, within(1e-9));
    assertThat(cross.netHeight()).isCloseTo(34 * 0.0254, within(1e-9));
    assertThat(cross.courtBehind()).isCloseTo(Math.hypot(22, 10) * 0.3048, within(1e-9));
  }

  /** Dinks from the line: straight into the kitchen ahead, or diagonally into the far one. */
  @Test
  void crossCourtDink_forgivesMore() {
    Vector contact = new Vector(-2.3, -2.5, 0.4);
    Target target =
        Target.of(
            new Requirement.ClearsNet(0.05),
            Requirement.LandsIn.kitchen(),
            Requirement.NotAttackable.AT_THE_LINE);
    Shot dink = new Shot(contact, 0, target, Conditions.CALM);
    ShotLine straight = ShotLine.of(dink, new BestAim.Landing(1.4, -2.5));
    ShotLine cross = ShotLine.of(dink, new BestAim.Landing(1.4, 2.5));
    assertThat(cross.window().area()).isGreaterThan(straight.window().area());
    assertThat(straight.perSpeed()).isBetween(0.01, 0.3);
    assertThat(straight.perElevation()).isBetween(0.005, 0.8);
  }

  /** Landings simulated from a known scatter give it back, within three standard errors. */
  @Test
  void landings_ofAKnownScatter_giveItBack() {
    Shot shot = shot(0, Requirement.LandsIn.kitchen());
    Scatter truth = Scatter.ofLevel(4.0);
    SplittableRandom random = new SplittableRandom(3);
    ShotTrial trial = shot.trial();
    List<BestAim.Landing> points = new ArrayList<>();
    int balls = 400;
    int inTheNet = 0;
    for (int i = 0; i < balls; i++) {
      trial.fly(
          12 * (1 + truth.speed() * random.nextGaussian()),
          Math.toRadians(20) + truth.elevation() * random.nextGaussian(),
          truth.bearing() * random.nextGaussian());
      if (new Requirement.ClearsNet(0).margin(trial) > 0) {
        points.add(new BestAim.Landing(trial.landX(), trial.landY()));
      } else {
        inTheNet++;
      }
    }
    Scatter found = new Landings(points).likely(shot, Math.toRadians(20), inTheNet).scatter();
    double error = 3 / Math.sqrt(2.0 * balls) + 0.01;
    assertThat(found.bearing() / truth.bearing()).isCloseTo(1, within(error));
    assertThat(found.speed() / truth.speed()).isCloseTo(1, within(error));
    assertThat(found.elevation() / truth.elevation()).isCloseTo(1, within(error));
  }

  @Test
  void landings_thatNoSuchShotReaches_areRefused() {
    Landings far = new Landings(List.of(new BestAim.Landing(90, 0), new BestAim.Landing(95, 0)));
    Shot shot = shot(0, Requirement.LandsIn.kitchen());
    assertThatThrownBy(() -> far.likely(shot, Math.toRadians(20), 0))
        .hasMessageContaining("No ball hit at 20.0°")
        .hasMessageContaining("Maybe");
    assertThatThrownBy(() -> new Landings(List.of())).hasMessageContaining("Maybe hit 20");
  }

  /** Against 20,000 balls drawn from the spread of drag and lift. */
  @Test
  void range_overTheBallsSpread_holdsFourBallsInFive() {
    Launch launch = Launch.of(new Vector(-6.7, 0, 0.7), LaunchAim.degrees(14, 12, 0), 60);
    Ranged range =
        BallSpread.of(Conditions.CALM, true, conditions -> landing(conditions, launch))
            .range(x -> x);
    SplittableRandom random = new SplittableRandom(5);
    Ball.Aero aero = Ball.OUTDOOR.aero();
    int balls = 20_000;
    int within = 0;
    for (int i = 0; i < balls; i++) {
      double drag = Math.max(0, aero.drag() + aero.dragSd() * random.nextGaussian());
      double lift = Math.max(0, aero.liftSlope() + aero.liftSlopeSd() * random.nextGaussian());
      Ball ball = Ball.OUTDOOR.with(new Ball.Aero(drag, 0, lift, 0));
      double x =
          landing(new Conditions(ball, Conditions.CALM.air(), Conditions.CALM.wind()), launch);
      within += x > range.low() && x < range.high() ? 1 : 0;
    }
    assertThat(range.low()).isLessThan(range.central());
    assertThat(range.central()).isLessThan(range.high());
    assertThat((double) within / balls).isCloseTo(0.8, within(0.02));
  }

  private static double landing(Conditions conditions, Launch launch) {
    return FlightSolver.of(conditions).fly(launch).landing().ball().position().x();
  }

  @Test
  void range_ofANumberThatDoesNotDependOnTheBall_isThatNumber() {
    Ranged range = BallSpread.of(Conditions.CALM, true, conditions -> 7.0).range(x -> x);
    assertThat(range.low()).isCloseTo(7, within(1e-9));
    assertThat(range.high()).isCloseTo(7, within(1e-9));
  }

  /** Linear in drag and lift: SDs add as squares; without spin lift changes nothing. */
  @Test
  void range_ofALinearNumber_isThatOfANormalOne() {
    Ball.Aero aero = Ball.OUTDOOR.aero();
    double tenth = 1.2815515655446004; // upper tenth of the normal distribution, any table
    BallSpread<Ball.Aero> spinning =
        BallSpread.of(Conditions.CALM, true, conditions -> conditions.ball().aero());
    Ranged range = spinning.range(ball -> 3 * ball.drag() + 2 * ball.liftSlope());
    double half = tenth * Math.hypot(3 * aero.dragSd(), 2 * aero.liftSlopeSd());
    assertThat(range.high() - range.central()).isCloseTo(half, within(1e-12));
    assertThat(range.central() - range.low()).isCloseTo(half, within(1e-12));
    BallSpread<Ball.Aero> flat =
        BallSpread.of(Conditions.CALM, false, conditions -> conditions.ball().aero());
    assertThat(flat.range(Ball.Aero::liftSlope)).isEqualTo(Ranged.always(aero.liftSlope()));
  }

  /** A ball without an answer takes the ends away and leaves the number. */
  @Test
  void range_whereABallHasNoAnswer_isNotKnown() {
    BallSpread<Double> drags =
        BallSpread.of(Conditions.CALM, false, conditions -> conditions.ball().aero().drag());
    Ranged range = drags.range(drag -> drag > 0.4 ? Double.NaN : drag);
    assertThat(range.isKnown()).isFalse();
    assertThat(range.central()).isEqualTo(Ball.OUTDOOR.aero().drag());
  }
}
