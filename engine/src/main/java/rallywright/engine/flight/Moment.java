package rallywright.engine.flight;

import org.jspecify.annotations.Nullable;

/** A moment of the flight that a solver has found, kept without making an object a flight. */
final class Moment {

  /** Seconds after the launch; NaN while unknown. */
  double seconds = Double.NaN;

  /** Position and velocity. */
  final double[] state = new double[Motion.SIZE];

  void clear() {
    seconds = Double.NaN;
  }

  boolean known() {
    return seconds >= 0;
  }

  void set(double when, double[] what) {
    seconds = when;
    System.arraycopy(what, 0, state, 0, Motion.SIZE);
  }

  double x() {
    return state[0];
  }

  double y() {
    return state[1];
  }

  double z() {
    return state[2];
  }

  /** The moment as a value, or null while unknown. */
  @Nullable Passage toLaunch(Launch start) {
    return known() ? toSure(start) : null;
  }

  Passage toSure(Launch start) {
    return new Passage(
        seconds,
        new Launch(
            new Vector(state[0], state[1], state[2]),
            new Vector(state[3], state[4], state[5]),
            start.spin()));
  }
}
