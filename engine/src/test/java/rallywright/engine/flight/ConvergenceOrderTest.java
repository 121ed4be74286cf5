package rallywright.engine.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.quantity.Source;

/**
 * The order of the method, measured with steps of one length: halving them must divide the error by
 * 2⁵ = 32 (J. R. Dormand and P. J. Prince 1980: the solution is carried on at order 5).
 */
class ConvergenceOrderTest {

  private static final double G = Conditions.GRAVITY;

  private static double[] end(Conditions conditions, double[] start, double[] spin, int steps) {
    Motion motion = new Motion(conditions);
    motion.spin(spin[0], spin[1], spin[2]);
    Stepper stepper = new Stepper(motion);
    double[] from = start.clone();
    double[] to = new double[Motion.SIZE];
    stepper.begin(from);
    for (int i = 0; i < steps; i++) {
      stepper.step(from, 1.0 / steps, to);
      System.arraycopy(to, 0, from, 0, Motion.SIZE);
      stepper.accept();
    }
    return from;
  }

  /** The largest difference in any component. */
  private static double apart(double[] one, double[] other) {
    double largest = 0;
    for (int i = 0; i < one.length; i++) {
      largest = Math.max(largest, Math.abs(one[i] - other[i]));
    }
    return largest;
  }

  private static double order(double coarse, double fine) {
    return Math.log(coarse / fine) / Math.log(2);
  }

  /**
   * Fall with quadratic drag has a closed form: v = -vt tanh(gt/vt), z = -(vt²/g) ln cosh(gt/vt).
   */
  @Test
  void fall_withDrag_convergesToTheClosedFormAtOrderFive() {
    double terminal = 5;
    Ball ball = new Ball(1, 1e-6, new Ball.Aero(0, 0, 0, 0), Bounce.USUAL, Source.ASSUMPTION);
    double drag = 2 * G / (terminal * terminal) / ball.crossSection();
    Conditions air = new Conditions(ball.with(new Ball.Aero(drag, 0, 0, 0)), new Air(1), Wind.NONE);
    double z = 30 - terminal * terminal / G * Math.log(Math.cosh(G / terminal));
    double v = -terminal * Math.tanh(G / terminal);
    double[] errors = new double[4];
    for (int i = 0; i < errors.length; i++) {
      double[] end = end(air, new double[] {0, 0, 30, 0, 0, 0}, new double[3], 16 << i);
      errors[i] = Math.max(Math.abs(end[2] - z), Math.abs(end[5] - v));
    }
    assertThat(errors[3]).isLessThan(1e-10);
    assertThat(order(errors[1], errors[2])).isCloseTo(5, within(0.3));
    assertThat(order(errors[2], errors[3])).isCloseTo(5, within(0.3));
  }

  /** A drive with topspin and a third of sidespin in a cross wind, beside 2048 steps. */
  @ParameterizedTest
  @EnumSource
  void drive_withSpinInAnyWind_convergesAtOrderFive(Wind.Profile profile) {
    Conditions windy =
        new Conditions(Ball.OUTDOOR, new Air(1.2), new Wind(new Vector(-4, 3, 0), profile));
    double[] start = {-6, 1, 8, 16, -1, 4};
    double[] spin = {10, 160, 50};
    double[] exact = end(windy, start, spin, 2048);
    double coarse = apart(end(windy, start, spin, 16), exact);
    double middle = apart(end(windy, start, spin, 32), exact);
    double fine = apart(end(windy, start, spin, 64), exact);
    assertThat(fine).isBetween(1e-13, 1e-8);
    assertThat(order(coarse, middle)).isCloseTo(5, within(0.4));
    assertThat(order(middle, fine)).isCloseTo(5, within(0.4));
  }

  /** In the middle of a long step the arc is nearer to the truth than the step's own allowance. */
  @Test
  void arc_ofALongStep_isAsExactAsTheStep() {
    Motion motion = new Motion(Conditions.CALM);
    motion.spin(20, 150, -60);
    double[] start = {-6, 1, 2, 14, -1, 3};
    double[] end = new double[Motion.SIZE];
    Stepper stepper = new Stepper(motion);
    stepper.begin(start);
    stepper.step(start, 0.2, end);
    double allowance = stepper.error();
    Arc arc = new Arc(stepper);
    arc.between(start, end, 0.2);
    double[] found = new double[Motion.SIZE];
    arc.write(0.5, found);
    double[] exact = new double[Motion.SIZE];
    double[] from = start.clone();
    Stepper small = new Stepper(motion);
    small.begin(from);
    for (int i = 0; i < 64; i++) {
      small.step(from, 0.1 / 64, exact);
      System.arraycopy(exact, 0, from, 0, Motion.SIZE);
      small.accept();
    }
    assertThat(allowance).isBetween(1e-9, 1e-4);
    for (int i = 0; i < Motion.SIZE; i++) {
      assertThat(found[i]).isCloseTo(exact[i], within(allowance));
    }
  }
}
