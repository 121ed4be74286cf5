package rallywright.engine.flight;

/**
 * One step of Dormand and Prince's pair of orders 5 and 4: J. R. Dormand and P. J. Prince, <em>A
 * family of embedded Runge-Kutta formulae</em>, J. Comput. Appl. Math. 6:19-26 (1980); the
 * coefficients from memory, checked by the order that the tests measure.
 *
 * <p>For the maintainer: all arrays are made once; a step allocates nothing. The last stage of a
 * step is the first of the next.
 */
final class Stepper {

  private static final int STAGES = 7;
  private static final double[] SECOND = {1.0 / 5};
  private static final double[] THIRD = {3.0 / 40, 9.0 / 40};
  private static final double[] FOURTH = {44.0 / 45, -56.0 / 15, 32.0 / 9};
  private static final double[] FIFTH = {
    19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729
  };
  private static final double[] SIXTH = {
    9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656
  };
  private static final double[] LAST = {
    35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84
  };

  private final Motion motion;
  private final double[][] rates = new double[STAGES][Motion.SIZE];
  private final double[] trial = new double[Motion.SIZE];

  Stepper(Motion motion) {
    this.motion = motion;
  }

  /** Takes the rate at the start of the first step. */
  void begin(double[] state) {
    motion.rate(state, rates[0]);
  }

  /** The rate at the start of the step that comes. */
  double[] rateAtStart() {
    return rates[0];
  }

  /** The rate at the end of the step just taken. */
  double[] rateAtEnd() {
    return rates[STAGES - 1];
  }

  /** The last step is accepted: its end is the next one's start. */
  void accept() {
    double[] end = rates[STAGES - 1];
    rates[STAGES - 1] = rates[0];
    rates[0] = end;
  }

  /** From a state over some seconds; the rate at the start must be taken already. */
  void step(double[] from, double seconds, double[] to) {
    stage(from, seconds, 1, SECOND);
    stage(from, seconds, 2, THIRD);
    stage(from, seconds, 3, FOURTH);
    stage(from, seconds, 4, FIFTH);
    stage(from, seconds, 5, SIXTH);
    stage(from, seconds, STAGES - 1, LAST);
    System.arraycopy(trial, 0, to, 0, Motion.SIZE);
  }

  /** Only the rates that are known by then: a weight of 0 would not undo one that is no number. */
  private void stage(double[] from, double seconds, int stage, double[] weights) {
    for (int i = 0; i < Motion.SIZE; i++) {
      double sum = 0;
      for (int known = 0; known < stage; known++) {
        sum += weights[known] * rates[known][i];
      }
      trial[i] = from[i] + seconds * sum;
    }
    motion.rate(trial, rates[stage]);
  }

  /** The estimated error of the step just taken, order 5 less order 4: its largest component. */
  double error(double seconds) {
    double largest = 0;
    for (int i = 0; i < Motion.SIZE; i++) {
      double sum =
          71.0 / 57600 * rates[0][i]
              - 71.0 / 16695 * rates[2][i]
              + 71.0 / 1920 * rates[3][i]
              - 17253.0 / 339200 * rates[4][i]
              + 22.0 / 525 * rates[5][i]
              - 1.0 / 40 * rates[6][i];
      largest = Math.max(largest, Math.abs(seconds * sum));
    }
    return largest;
  }
}
