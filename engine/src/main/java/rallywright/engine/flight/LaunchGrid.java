package rallywright.engine.flight;

/**
 * What flights of one shot do, on a small grid of speeds, elevations and bearings, and between its
 * points by cubics: landing, height over the net, height and time at the opponent's reach are
 * smooth in the launch, only whether the shot succeeds is not.
 *
 * <p>For the maintainer: a trial is contracted one axis at a time, speed last, so that a sweep over
 * speeds costs a few multiplications each. What a flight does at the net hangs on how fast it goes
 * toward the net. So the speeds of the grid are the same toward the net at every bearing, those in
 * the middle as they are: along such a line results hardly bend, and five bearings are enough on a
 * diagonal too. With the same speeds at all bearings chances of sharp cross-court dinks into the
 * wind were off by up to 0.03.
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

  /** Of launches that hardly go toward the net; none that is aimed comes near. */
  private static final double LEAST_FORWARD = 0.1;

  private final Axis speeds;
  private final Axis elevations;
  private final Axis bearings;
  private final double[] values;
  private final double[] atElevation;
  private final double[] atBearing;
  private final double[] weights = new double[Axis.NEIGHBOURS];
  private final Fields fields;
  private final double forwardInTheMiddle;
  private double forward = 1;

  /** The launches that a grid covers. */
  record Span(LaunchBox box, double rightmost, double leftmost) {}

  LaunchGrid(Shot shot, Span span, Points points) {
    fields = new Fields(shot);
    speeds = new Axis(points.launches, span.box().slowest(), span.box().fastest());
    elevations = new Axis(points.launches, span.box().lowest(), span.box().highest());
    bearings = new Axis(points.bearings, span.rightmost(), span.leftmost());
    forwardInTheMiddle = cosine((span.rightmost() + span.leftmost()) / 2);
    values = new double[points.flights() * Fields.COUNT];
    atElevation = new double[points.launches * points.bearings * Fields.COUNT];
    atBearing = new double[points.launches * Fields.COUNT];
    ShotTrial trial = shot.trial();
    int at = 0;
    for (int j = 0; j < points.launches; j++) {
      for (int k = 0; k < points.bearings; k++) {
        for (int i = 0; i < points.launches; i++) {
          double side = bearings.point(k);
          trial.fly(speeds.point(i) / forward(side), elevations.point(j), side);
          Fields.write(trial, values, at);
          at += Fields.COUNT;
        }
      }
    }
  }

  /** How much of a speed goes toward the net, in shares of what does in the middle of the grid. */
  private double forward(double bearing) {
    return cosine(bearing) / forwardInTheMiddle;
  }

  private static double cosine(double bearing) {
    return Math.max(LEAST_FORWARD, Math.cos(bearing));
  }

  void elevation(double elevation) {
    int first = elevations.first(elevation);
    elevations.weights(elevation, first, weights);
    contract(values, first, atElevation);
  }

  void bearing(double bearing) {
    forward = forward(bearing);
    int first = bearings.first(bearing);
    bearings.weights(bearing, first, weights);
    contract(atElevation, first, atBearing);
  }

  /** The margin at a speed, for the elevation and bearing set before. */
  double margin(double speed) {
    double scaled = speed * forward;
    int first = speeds.first(scaled);
    speeds.weights(scaled, first, weights);
    contract(atBearing, first, fields.values);
    return fields.margin();
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
