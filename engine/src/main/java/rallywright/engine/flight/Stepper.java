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

  private static final double[][] STAGES = {
    {},
    {1.0 / 5},
    {3.0 / 40, 9.0 / 40},
    {44.0 / 45, -56.0 / 15, 32.0 / 9},
    {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
    {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
    {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
  };

  /** Weights of order 5 less those of order 4. */
  private static final double[] ERROR = {
    71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
  };

  private final Motion motion;
  private final double[][] rates = new double[STAGES.length][Motion.SIZE];
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
    return rates[STAGES.length - 1];
  }

  /** The last step is accepted: its end is the next one's start. */
  void accept() {
    double[] end = rates[STAGES.length - 1];
    rates[STAGES.length - 1] = rates[0];
    rates[0] = end;
  }

  /** From a state over some seconds; the rate at the start must be taken already. */
  void step(double[] from, double seconds, double[] to) {
    for (int stage = 1; stage < STAGES.length; stage++) {
      double[] weights = STAGES[stage];
      for (int i = 0; i < Motion.SIZE; i++) {
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
          sum += weights[j] * rates[j][i];
        }
        trial[i] = from[i] + seconds * sum;
      }
      motion.rate(trial, rates[stage]);
    }
    System.arraycopy(trial, 0, to, 0, Motion.SIZE);
  }

  /** The estimated error of the step just taken: the largest of its components. */
  double error(double seconds) {
    double largest = 0;
    for (int i = 0; i < Motion.SIZE; i++) {
      double sum = 0;
      for (int j = 0; j < ERROR.length; j++) {
        sum += ERROR[j] * rates[j][i];
      }
      largest = Math.max(largest, Math.abs(seconds * sum));
    }
    return largest;
  }
}
