package rallywright.engine.flight;

import rallywright.engine.court.Court;
import rallywright.engine.court.Net;

/**
 * The line of a shot from a place to a place on the floor, and what it offers: straight lines are
 * short and cross the net where it is high, diagonal ones are long and cross it in the middle.
 *
 * @param distance from contact to the place, seen from above, in metres
 * @param netHeight of the net where the line crosses it, in metres
 * @param courtBehind how much of the line lies in the court beyond the net, in metres
 * @param window the launches along the line that do what the target asks
 * @param perSpeed what the window forgives in speed: half its width where it is widest, as a share
 * @param perElevation what it forgives in elevation: half its height, in radians
 */
public record ShotLine(
    double distance,
    double netHeight,
    double courtBehind,
    LaunchWindow window,
    double perSpeed,
    double perElevation) {

  /**
   * The line of a shot.
   *
   * @param shot from where, with which spin, to what end, in which conditions
   * @param place on the floor, beyond the net
   * @return the line
   */
  public static ShotLine of(Shot shot, BestAim.Landing place) {
    Vector from = shot.contact();
    double along = place.x() - from.x();
    double across = place.y() - from.y();
    if (!(place.x() > 0)) {
      throw new IllegalArgumentException(
          "The place must lie beyond the net: %s m is not above 0. Maybe 1.5."
              .formatted(place.x()));
    }
    double atNet = from.y() - from.x() * across / along;
    LaunchWindow window = LaunchWindow.of(shot, Math.atan2(across, along), LaunchBox.EVERY_SHOT);
    return of(Math.hypot(along, across), Net.heightM(atNet), behind(atNet, across / along), window);
  }

  /**
   * The same line for a ball that flies a little differently, its window to some in a thousand.
   *
   * @param shot the same shot with the other ball
   * @return the line
   */
  public ShotLine like(Shot shot) {
    return of(distance, netHeight, courtBehind, LaunchWindow.roughly(shot, window.bearing()));
  }

  private static ShotLine of(
      double distance, double netHeight, double courtBehind, LaunchWindow window) {
    Forgiven forgiven = Forgiven.by(window);
    return new ShotLine(
        distance, netHeight, courtBehind, window, forgiven.perSpeed(), forgiven.perElevation());
  }

  /** From the net to where the line leaves the court by the baseline or a side line. */
  private static double behind(double atNet, double slope) {
    double end = Court.HALF_LENGTH.metres();
    double half = Court.HALF_WIDTH.metres();
    if (Math.abs(atNet) > half) {
      return 0;
    }
    double toSide = slope == 0 ? end : ((slope > 0 ? half : -half) - atNet) / slope;
    return Math.min(end, toSide) * Math.hypot(1, slope);
  }
}
