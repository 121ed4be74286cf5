package rallywright.engine.flight;

/**
 * One step of Dormand and Prince's pair of orders 5 and 4: J. R. Dormand and P. J. Prince, <em>A
 * family of embedded Runge-Kutta formulae</em>, J. Comput. Appl. Math. 6:19-26 (1980); the
 * coefficients from memory, checked by reference flights and exact problems; the order is not
 * measured.
 *
 * <p>For the maintainer: all arrays are made once; a step allocates nothing. The last stage of a
 * step is the first of the next. Stages are written out: with tables of weights a flight takes a
 * fifth longer.
 */
final class Stepper {

  private final Motion motion;
  private double[] k1 = new double[Motion.SIZE];
  private final double[] k2 = new double[Motion.SIZE];
  private final double[] k3 = new double[Motion.SIZE];
  private final double[] k4 = new double[Motion.SIZE];
  private final double[] k5 = new double[Motion.SIZE];
  private final double[] k6 = new double[Motion.SIZE];
  private double[] k7 = new double[Motion.SIZE];
  private final double[] trial = new double[Motion.SIZE];

  Stepper(Motion motion) {
    this.motion = motion;
  }

  /** Takes the rate at the start of the first step. */
  void begin(double[] state) {
    motion.rate(state, k1);
  }

  /** The rate at the start of the step that comes. */
  double[] rateAtStart() {
    return k1;
  }

  /** The rate at the end of the step just taken. */
  double[] rateAtEnd() {
    return k7;
  }

  /** The last step is accepted: its end is the next one's start. */
  void accept() {
    double[] end = k7;
    k7 = k1;
    k1 = end;
  }

  /** From a state over some seconds; the rate at the start must be taken already. */
  void step(double[] from, double seconds, double[] to) {
    second(from, seconds);
    third(from, seconds);
    fourth(from, seconds);
    fifth(from, seconds);
    sixth(from, seconds);
    last(from, seconds, to);
  }

  private void second(double[] from, double seconds) {
    for (int i = 0; i < Motion.SIZE; i++) {
      trial[i] = from[i] + seconds * (1.0 / 5 * k1[i]);
    }
    motion.rate(trial, k2);
  }

  private void third(double[] from, double seconds) {
    for (int i = 0; i < Motion.SIZE; i++) {
      trial[i] = from[i] + seconds * (3.0 / 40 * k1[i] + 9.0 / 40 * k2[i]);
    }
    motion.rate(trial, k3);
  }

  private void fourth(double[] from, double seconds) {
    for (int i = 0; i < Motion.SIZE; i++) {
      trial[i] = from[i] + seconds * (44.0 / 45 * k1[i] - 56.0 / 15 * k2[i] + 32.0 / 9 * k3[i]);
    }
    motion.rate(trial, k4);
  }

  private void fifth(double[] from, double seconds) {
    for (int i = 0; i < Motion.SIZE; i++) {
      trial[i] =
          from[i]
              + seconds
                  * (19372.0 / 6561 * k1[i]
                      - 25360.0 / 2187 * k2[i]
                      + 64448.0 / 6561 * k3[i]
                      - 212.0 / 729 * k4[i]);
    }
    motion.rate(trial, k5);
  }

  private void sixth(double[] from, double seconds) {
    for (int i = 0; i < Motion.SIZE; i++) {
      trial[i] =
          from[i]
              + seconds
                  * (9017.0 / 3168 * k1[i]
                      - 355.0 / 33 * k2[i]
                      + 46732.0 / 5247 * k3[i]
                      + 49.0 / 176 * k4[i]
                      - 5103.0 / 18656 * k5[i]);
    }
    motion.rate(trial, k6);
  }

  private void last(double[] from, double seconds, double[] to) {
    for (int i = 0; i < Motion.SIZE; i++) {
      to[i] =
          from[i]
              + seconds
                  * (35.0 / 384 * k1[i]
                      + 500.0 / 1113 * k3[i]
                      + 125.0 / 192 * k4[i]
                      - 2187.0 / 6784 * k5[i]
                      + 11.0 / 84 * k6[i]);
    }
    motion.rate(to, k7);
  }

  /** The estimated error of the step just taken, order 5 less order 4: its largest component. */
  double error(double seconds) {
    double largest = 0;
    for (int i = 0; i < Motion.SIZE; i++) {
      double sum =
          71.0 / 57600 * k1[i]
              - 71.0 / 16695 * k3[i]
              + 71.0 / 1920 * k4[i]
              - 17253.0 / 339200 * k5[i]
              + 22.0 / 525 * k6[i]
              - 1.0 / 40 * k7[i];
      largest = Math.max(largest, Math.abs(seconds * sum));
    }
    return largest;
  }
}
