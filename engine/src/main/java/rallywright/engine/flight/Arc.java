package rallywright.engine.flight;

/**
 * The way of a ball within one step: for each axis the polynomial of degree 5 with the place,
 * velocity and acceleration of both ends (Hermite's interpolation). It is off by less than the step
 * itself: the sixth derivative of the way times h⁶/46080.
 */
final class Arc {

  private static final int ROUNDS = 20;
  private static final double DONE = 1e-14;
  private static final int TERMS = 6;
  private static final int AXES = 3;

  private final Stepper stepper;
  private final double[] terms = new double[AXES * TERMS];
  private double seconds;

  Arc(Stepper stepper) {
    this.stepper = stepper;
  }

  /** The arc of the step just taken. */
  void between(double[] before, double[] after, double h) {
    seconds = h;
    for (int k = 0; k < AXES; k++) {
      double v = h * before[k + 3];
      double a = h * h * stepper.atStart(k);
      double place = after[k] - before[k] - v - a / 2;
      double speed = h * after[k + 3] - v - a;
      double change = h * h * stepper.atEnd(k) - a;
      int at = TERMS * k;
      terms[at] = before[k];
      terms[at + 1] = v;
      terms[at + 2] = a / 2;
      terms[at + 3] = 10 * place - 4 * speed + change / 2;
      terms[at + 4] = -15 * place + 7 * speed - change;
      terms[at + 5] = 6 * place - 3 * speed + change / 2;
    }
  }

  private double place(int at, double s) {
    double high = terms[at + 3] + s * (terms[at + 4] + s * terms[at + 5]);
    return terms[at] + s * (terms[at + 1] + s * (terms[at + 2] + s * high));
  }

  private double slope(int at, double s) {
    double high = 3 * terms[at + 3] + s * (4 * terms[at + 4] + s * 5 * terms[at + 5]);
    return terms[at + 1] + s * (2 * terms[at + 2] + s * high);
  }

  private double bend(int at, double s) {
    return 2 * terms[at + 2]
        + s * (6 * terms[at + 3] + s * (12 * terms[at + 4] + s * 20 * terms[at + 5]));
  }

  /** Which share of the step it takes until a coordinate has a value, by Newton from a guess. */
  double at(int axis, double value, double guess) {
    int at = TERMS * axis;
    double s = guess;
    for (int round = 0; round < ROUNDS; round++) {
      double next = within(s - (place(at, s) - value) / slope(at, s));
      if (Math.abs(next - s) < DONE) {
        return next;
      }
      s = next;
    }
    return s;
  }

  /** Which share of the step it takes until the ball stops rising. */
  double top() {
    int at = TERMS * 2;
    double start = slope(at, 0);
    double s = start / (start - slope(at, 1));
    for (int round = 0; round < ROUNDS; round++) {
      double next = within(s - slope(at, s) / bend(at, s));
      if (Math.abs(next - s) < DONE) {
        return next;
      }
      s = next;
    }
    return s;
  }

  private static double within(double share) {
    return Math.min(1, Math.max(0, share));
  }

  /** Place and velocity at a share of the step. */
  void write(double share, double[] state) {
    for (int k = 0; k < AXES; k++) {
      state[k] = place(TERMS * k, share);
      state[k + 3] = slope(TERMS * k, share) / seconds;
    }
  }
}
