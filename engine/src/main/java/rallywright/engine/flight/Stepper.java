package rallywright.engine.flight;

/**
 * One step of Dormand and Prince's pair of orders 5 and 4: J. R. Dormand and P. J. Prince, <em>A
 * family of embedded Runge-Kutta formulae</em>, J. Comput. Appl. Math. 6:19-26 (1980); the
 * coefficients from memory, checked by reference flights, exact problems and the order of
 * convergence.
 *
 * <p>For the maintainer: the place does not act on the ball (but for the height, where the wind
 * changes with it), so only velocities pass through the stages, and the new place follows from the
 * same accelerations: x + hv + h² Σ β_j A_j with β_j = Σ_i b_i a_ij. It is the same method, number
 * by number, at half the work. All arrays are made once; a step allocates nothing. The last stage
 * of a step is the first of the next. Stages are written out: with loops over tables a flight takes
 * longer.
 */
final class Stepper {

  private static final int STAGES = 7;
  private static final int AXES = 3;

  /** a_ij of the pair; the last row is also b, the weights of order 5. */
  private static final double[][] A = {
    {},
    {1.0 / 5},
    {3.0 / 40, 9.0 / 40},
    {44.0 / 45, -56.0 / 15, 32.0 / 9},
    {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
    {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
    {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
  };

  /** Order 5 less order 4. */
  private static final double[] E = {
    71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
  };

  /** Where in the step a stage stands: the sum of its row. */
  private static final double[] C = {0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1};

  private static final double B1 = A[6][0];
  private static final double B3 = A[6][2];
  private static final double B4 = A[6][3];
  private static final double B5 = A[6][4];
  private static final double B6 = A[6][5];

  private static final double[] PLACE = through(A[6]);
  private static final double P1 = PLACE[0];
  private static final double P2 = PLACE[1];
  private static final double P3 = PLACE[2];
  private static final double P4 = PLACE[3];
  private static final double P5 = PLACE[4];

  private static final double[] PLACE_ERROR = through(E);
  private static final double F1 = PLACE_ERROR[0];
  private static final double F2 = PLACE_ERROR[1];
  private static final double F3 = PLACE_ERROR[2];
  private static final double F4 = PLACE_ERROR[3];
  private static final double F5 = PLACE_ERROR[4];
  private static final double F6 = PLACE_ERROR[5];

  /** How the stages' heights follow from the accelerations of earlier ones. */
  private static final double[][] HEIGHTS = heights();

  private final Motion motion;

  /** Accelerations of the seven stages, three numbers each. */
  private final double[] a = new double[AXES * STAGES];

  private double[] from = a;
  private double h;

  Stepper(Motion motion) {
    this.motion = motion;
  }

  /** What accelerations weigh in the place when stages weigh so much: Σ_i w_i a_ij. */
  private static double[] through(double[] weights) {
    double[] sums = new double[STAGES];
    for (int i = 0; i < weights.length; i++) {
      for (int j = 0; j < A[i].length; j++) {
        sums[j] += weights[i] * A[i][j];
      }
    }
    return sums;
  }

  private static double[][] heights() {
    double[][] rows = new double[STAGES][];
    for (int i = 0; i < STAGES; i++) {
      rows[i] = through(A[i]);
    }
    return rows;
  }

  /** Takes the acceleration at the start of the first step. */
  void begin(double[] state) {
    from = state;
    h = 0;
    accelerate(0, state[3], state[4], state[5]);
  }

  /** An acceleration at the start of the step that comes. */
  double atStart(int axis) {
    return a[axis];
  }

  /** An acceleration at the end of the step just taken. */
  double atEnd(int axis) {
    return a[18 + axis];
  }

  /** The last step is accepted: its end is the next one's start. */
  void accept() {
    a[0] = a[18];
    a[1] = a[19];
    a[2] = a[20];
  }

  /** From a state over some seconds; the acceleration at the start must be taken already. */
  void step(double[] start, double seconds, double[] to) {
    from = start;
    h = seconds;
    double p = h / 5;
    accelerate(1, from[3] + p * a[0], from[4] + p * a[1], from[5] + p * a[2]);
    third();
    fourth();
    fifth();
    sixth();
    last(to);
    accelerate(6, to[3], to[4], to[5]);
  }

  private void accelerate(int stage, double vx, double vy, double vz) {
    double share = motion.isSteady() ? 1 : motion.shareAt(height(stage));
    motion.accelerate(share, vx, vy, vz);
    int at = AXES * stage;
    a[at] = motion.ax;
    a[at + 1] = motion.ay;
    a[at + 2] = motion.az;
  }

  private double height(int stage) {
    double sum = 0;
    double[] weights = HEIGHTS[stage];
    for (int j = 0; j < stage; j++) {
      sum += weights[j] * a[AXES * j + 2];
    }
    return from[2] + h * (C[stage] * from[5] + h * sum);
  }

  private void third() {
    double p = h * (3.0 / 40);
    double q = h * (9.0 / 40);
    accelerate(
        2,
        from[3] + p * a[0] + q * a[3],
        from[4] + p * a[1] + q * a[4],
        from[5] + p * a[2] + q * a[5]);
  }

  private void fourth() {
    double p = h * (44.0 / 45);
    double q = h * (-56.0 / 15);
    double r = h * (32.0 / 9);
    accelerate(
        3,
        from[3] + p * a[0] + q * a[3] + r * a[6],
        from[4] + p * a[1] + q * a[4] + r * a[7],
        from[5] + p * a[2] + q * a[5] + r * a[8]);
  }

  private void fifth() {
    double p = h * (19372.0 / 6561);
    double q = h * (-25360.0 / 2187);
    double r = h * (64448.0 / 6561);
    double s = h * (-212.0 / 729);
    accelerate(
        4,
        from[3] + p * a[0] + q * a[3] + r * a[6] + s * a[9],
        from[4] + p * a[1] + q * a[4] + r * a[7] + s * a[10],
        from[5] + p * a[2] + q * a[5] + r * a[8] + s * a[11]);
  }

  private void sixth() {
    double p = h * (9017.0 / 3168);
    double q = h * (-355.0 / 33);
    double r = h * (46732.0 / 5247);
    double s = h * (49.0 / 176);
    double t = h * (-5103.0 / 18656);
    accelerate(
        5,
        from[3] + p * a[0] + q * a[3] + r * a[6] + s * a[9] + t * a[12],
        from[4] + p * a[1] + q * a[4] + r * a[7] + s * a[10] + t * a[13],
        from[5] + p * a[2] + q * a[5] + r * a[8] + s * a[11] + t * a[14]);
  }

  private void last(double[] to) {
    for (int k = 0; k < AXES; k++) {
      double third = a[k + 6];
      double fourth = a[k + 9];
      double fifth = a[k + 12];
      double place = P1 * a[k] + P2 * a[k + 3] + P3 * third + P4 * fourth + P5 * fifth;
      double speed = B1 * a[k] + B3 * third + B4 * fourth + B5 * fifth + B6 * a[k + 15];
      to[k] = from[k] + h * (from[k + 3] + h * place);
      to[k + 3] = from[k + 3] + h * speed;
    }
  }

  /** The estimated error of the step just taken, order 5 less order 4: its largest component. */
  double error() {
    double largest = 0;
    for (int k = 0; k < AXES; k++) {
      double first = a[k];
      double third = a[k + 6];
      double fourth = a[k + 9];
      double fifth = a[k + 12];
      double sixth = a[k + 15];
      double speed =
          E[0] * first
              + E[2] * third
              + E[3] * fourth
              + E[4] * fifth
              + E[5] * sixth
              + E[6] * a[k + 18];
      double place =
          F1 * first + F2 * a[k + 3] + F3 * third + F4 * fourth + F5 * fifth + F6 * sixth;
      largest = Math.max(largest, Math.max(Math.abs(speed), h * Math.abs(place)));
    }
    return h * largest;
  }
}
