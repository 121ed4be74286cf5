package rallywright.engine.flight;

/**
 * What flights of one shot do, on a small grid of speeds, elevations and bearings, and between its
 * points by cubics: landing, height over the net, height and time at the opponent's reach are
 * smooth in the launch, only whether the shot succeeds is not.
 *
 * <p>For the maintainer: a trial is contracted one axis at a time, speed last, so that a sweep over
 * speeds costs a few multiplications each.
 */
final class LaunchGrid {

  /**
   * Points along each axis.
   *
   * @param launches along speed and along elevation
   * @param bearings along bearing
   */
  record Points(int launches, int bearings) {

    /** Around one aim. */
    static final Points AROUND_AN_AIM = new Points(14, 5);

    /** Over the aims of one round of a climb. */
    static final Points OVER_A_CLIMB = new Points(12, 5);

    /** Over all that a shot allows, to see where to look closer. */
    static final Points OVER_EVERYTHING = new Points(16, 5);

    /** How many flights a grid takes. */
    int flights() {
      return launches * launches * bearings;
    }
  }

  private final Shot shot;
  private final Axis speeds;
  private final Axis elevations;
  private final Axis bearings;
  private final double[] values;
  private final double[] atElevation;
  private final double[] atBearing;
  private final double[] weights = new double[Axis.NEIGHBOURS];
  private final Fields fields;

  /** The launches that a grid covers. */
  record Span(LaunchBox box, double rightmost, double leftmost) {}

  LaunchGrid(Shot shot, Span span, Points points) {
    this.shot = shot;
    fields = new Fields(shot);
    speeds = new Axis(points.launches, span.box().slowest(), span.box().fastest());
    elevations = new Axis(points.launches, span.box().lowest(), span.box().highest());
    bearings = new Axis(points.bearings, span.rightmost(), span.leftmost());
    values = new double[points.flights() * Fields.COUNT];
    atElevation = new double[points.launches * points.bearings * Fields.COUNT];
    atBearing = new double[points.launches * Fields.COUNT];
    ShotTrial trial = shot.trial();
    int at = 0;
    for (int j = 0; j < points.launches; j++) {
      for (int k = 0; k < points.bearings; k++) {
        for (int i = 0; i < points.launches; i++) {
          trial.fly(speeds.point(i), elevations.point(j), bearings.point(k));
          Fields.write(trial, values, at);
          at += Fields.COUNT;
        }
      }
    }
  }

  void elevation(double elevation) {
    int first = elevations.first(elevation);
    elevations.weights(elevation, first, weights);
    contract(values, first, atElevation);
  }

  void bearing(double bearing) {
    int first = bearings.first(bearing);
    bearings.weights(bearing, first, weights);
    contract(atElevation, first, atBearing);
  }

  /** The margin at a speed, for the elevation and bearing set before. */
  double margin(double speed) {
    int first = speeds.first(speed);
    speeds.weights(speed, first, weights);
    contract(atBearing, first, fields.values);
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
