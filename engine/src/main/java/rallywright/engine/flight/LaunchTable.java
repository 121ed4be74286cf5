package rallywright.engine.flight;

import java.util.Arrays;

/**
 * What flights of one shot at one bearing do, at some speeds and elevations, and between them by
 * cubics: what {@link LaunchGrid} is for scattered launches, for the edge of a window.
 *
 * <p>For the maintainer: both keep {@link Fields} at points of {@link Axis}. A grid is asked in
 * sweeps, axis after axis; the edge of a window is asked here and there, sixteen neighbours at
 * once.
 */
final class LaunchTable {

  private final Axis speeds;
  private final Axis elevations;
  private final double[] values;
  private final double[] speedWeights = new double[Axis.NEIGHBOURS];
  private final double[] elevationWeights = new double[Axis.NEIGHBOURS];
  private final Fields fields;
  private final int points;

  /** Flies points × points launches. */
  LaunchTable(Shot shot, double bearing, LaunchBox box, int points) {
    this.points = points;
    fields = new Fields(shot);
    speeds = new Axis(points, box.slowest(), box.fastest());
    elevations = new Axis(points, box.lowest(), box.highest());
    values = new double[points * points * Fields.COUNT];
    ShotTrial trial = shot.trial();
    int at = 0;
    for (int j = 0; j < points; j++) {
      for (int i = 0; i < points; i++) {
        trial.fly(speeds.point(i), elevations.point(j), bearing);
        Fields.write(trial, values, at);
        at += Fields.COUNT;
      }
    }
  }

  /** How clearly a launch does what the target asks: above 0 if it does. */
  double margin(double speed, double elevation) {
    int firstSpeed = speeds.first(speed);
    int firstElevation = elevations.first(elevation);
    speeds.weights(speed, firstSpeed, speedWeights);
    elevations.weights(elevation, firstElevation, elevationWeights);
    double[] sums = fields.values;
    Arrays.fill(sums, 0);
    for (int j = 0; j < Axis.NEIGHBOURS; j++) {
      int at = ((firstElevation + j) * points + firstSpeed) * Fields.COUNT;
      for (int i = 0; i < Axis.NEIGHBOURS; i++) {
        double weight = elevationWeights[j] * speedWeights[i];
        for (int k = 0; k < Fields.COUNT; k++) {
          sums[k] += weight * values[at + k];
        }
        at += Fields.COUNT;
      }
    }
    return fields.margin();
  }
}
