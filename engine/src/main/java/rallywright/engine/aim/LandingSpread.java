package rallywright.engine.aim;

import rallywright.engine.flight.Conditions;
import rallywright.engine.flight.FlightSolver;
import rallywright.engine.flight.Launch;
import rallywright.engine.flight.LaunchAim;
import rallywright.engine.flight.Scatter;
import rallywright.engine.flight.Vector;

/**
 * Where a player's balls land: the ellipse that holds eight in ten, to first order in the scatter.
 *
 * <p>The landing's covariance is Σ d dᵀ σ² over speed, elevation and bearing, with the derivatives
 * d by central differences; 8 in 10 of a normal spread in the plane lie within √(-2 ln 0.2) = 1.794
 * standard deviations (chi-squared with two degrees of freedom).
 *
 * @param longHalf half the long axis in metres
 * @param shortHalf half the short axis in metres
 * @param turn of the long axis from straight beyond the net toward the hitter's left, in radians
 */
public record LandingSpread(double longHalf, double shortHalf, double turn) {

  private static final double EIGHT_IN_TEN = Math.sqrt(-2 * Math.log(0.2));
  private static final double STEP = 0.05;

  static LandingSpread of(ShotSetting setting, LaunchAim aim, Scatter scatter) {
    Conditions conditions = setting.day().conditions();
    FlightSolver solver = FlightSolver.of(conditions);
    double[] sds = {aim.speed() * scatter.speed(), scatter.elevation(), scatter.bearing()};
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int k = 0; k < sds.length; k++) {
      Vector more = landing(solver, setting, moved(aim, k, STEP * sds[k]));
      Vector less = landing(solver, setting, moved(aim, k, -STEP * sds[k]));
      double x = (more.x() - less.x()) / (2 * STEP);
      double y = (more.y() - less.y()) / (2 * STEP);
      xx += x * x;
      xy += x * y;
      yy += y * y;
    }
    double middle = (xx + yy) / 2;
    double half = Math.hypot((xx - yy) / 2, xy);
    return new LandingSpread(
        EIGHT_IN_TEN * Math.sqrt(middle + half),
        EIGHT_IN_TEN * Math.sqrt(Math.max(0, middle - half)),
        Math.atan2(2 * xy, xx - yy) / 2);
  }

  private static LaunchAim moved(LaunchAim aim, int which, double by) {
    return new LaunchAim(
        aim.speed() + (which == 0 ? by : 0),
        aim.elevation() + (which == 1 ? by : 0),
        aim.bearing() + (which == 2 ? by : 0));
  }

  private static Vector landing(FlightSolver solver, ShotSetting setting, LaunchAim aim) {
    double spin = setting.hitter().spin().radiansPerSecond();
    return solver.fly(Launch.of(setting.contact(), aim, spin)).landing().ball().position();
  }

  /** Half the ellipse's extent along the court, in metres. */
  public double halfAlong() {
    return Math.hypot(longHalf * Math.cos(turn), shortHalf * Math.sin(turn));
  }

  /** Half the ellipse's extent across the court, in metres. */
  public double halfAcross() {
    return Math.hypot(longHalf * Math.sin(turn), shortHalf * Math.cos(turn));
  }
}
