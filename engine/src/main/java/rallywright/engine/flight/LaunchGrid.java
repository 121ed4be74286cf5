package rallywright.engine.flight;

/**
 * What flights of one shot do, on a small grid of speeds, elevations and bearings, and between its
 * points by cubics: landing, height over the net, height and time at the opponent's reach are
 * smooth in the launch, only whether the shot succeeds is not.
 *
 * <p>For the maintainer: a trial is contracted one axis at a time, speed first, so that a sweep
 * over bearings costs a few multiplications each.
 */
final class LaunchGrid {

  private static final int SPEEDS = 11;
  private static final int ELEVATIONS = 11;
  private static final int BEARINGS = 8;

  private final Shot shot;
  private final Axis speeds;
  private final Axis elevations;
  private final Axis bearings;
  private final double[] values = new double[SPEEDS * ELEVATIONS * BEARINGS * Fields.COUNT];
  private final double[] atSpeed = new double[ELEVATIONS * BEARINGS * Fields.COUNT];
  private final double[] atElevation = new double[BEARINGS * Fields.COUNT];
  private final double[] weights = new double[Axis.NEIGHBOURS];
  private final Fields fields;

  /** The launches that a grid covers. */
  record Span(LaunchBox box, double rightmost, double leftmost) {}

  LaunchGrid(Shot shot, Span span) {
    this.shot = shot;
    fields = new Fields(shot);
    speeds = new Axis(SPEEDS, span.box().slowest(), span.box().fastest());
    elevations = new Axis(ELEVATIONS, span.box().lowest(), span.box().highest());
    bearings = new Axis(BEARINGS, span.rightmost(), span.leftmost());
    ShotTrial trial = shot.trial();
    int at = 0;
    for (int i = 0; i < SPEEDS; i++) {
      for (int j = 0; j < ELEVATIONS; j++) {
        for (int k = 0; k < BEARINGS; k++) {
          trial.fly(speeds.point(i), elevations.point(j), bearings.point(k));
          Fields.write(trial, values, at);
          at += Fields.COUNT;
        }
      }
    }
  }

  /** How many flights a grid takes. */
  static int flights() {
    return SPEEDS * ELEVATIONS * BEARINGS;
  }

  void speed(double speed) {
    int first = speeds.first(speed);
    speeds.weights(speed, first, weights);
    contract(values, first, atSpeed);
  }

  void elevation(double elevation) {
    int first = elevations.first(elevation);
    elevations.weights(elevation, first, weights);
    contract(atSpeed, first, atElevation);
  }

  /** The margin at a bearing, for the speed and elevation set before. */
  double margin(double bearing) {
    int first = bearings.first(bearing);
    bearings.weights(bearing, first, weights);
    contract(atElevation, first, fields.values);
    double margin = shot.target().margin(fields);
    return Double.isNaN(margin) ? Requirement.NOWHERE_NEAR : margin;
  }

  private void contract(double[] from, int first, double[] to) {
    int a = first * to.length;
    int b = a + to.length;
    int c = b + to.length;
    int d = c + to.length;
    for (int j = 0; j < to.length; j++) {
      to[j] =
          weights[0] * from[a + j]
              + weights[1] * from[b + j]
              + weights[2] * from[c + j]
              + weights[3] * from[d + j];
    }
  }
}
