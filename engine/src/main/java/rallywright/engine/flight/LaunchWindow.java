package rallywright.engine.flight;

import java.util.List;

/**
 * The launches with which a shot does all that is asked: a region of speed and elevation at one
 * bearing. Its area is what the shot forgives.
 *
 * <p>For the maintainer: where the window lies is seen on a small table of flights with cubics
 * between them ({@link LaunchTable}); its edge is then traced around it by flights ({@link
 * WindowTrace}), so that a small one is as exact as a large one. Cubics alone were off by 3 in 100
 * against a strong headwind, which all but stops high balls.
 */
public final class LaunchWindow {

  /** Flights along each axis of the table. */
  private static final int POINTS = 24;

  private static final WindowTrace.Depth WIDE = new WindowTrace.Depth(6, 8);
  private static final WindowTrace.Depth CLOSE = new WindowTrace.Depth(5, 7);
  private static final WindowTrace.Depth LESS_CLOSE = new WindowTrace.Depth(4, 6);

  private final double bearing;
  private final WindowTrace trace;

  /**
   * A piece of the region's edge; the region lies to its left where speed goes right and elevation
   * up.
   *
   * @param from one end
   * @param to the other end
   */
  public record Edge(Corner from, Corner to) {}

  /**
   * A point of the picture.
   *
   * @param speed metres per second
   * @param elevation radians
   */
  public record Corner(double speed, double elevation) {}

  private LaunchWindow(double bearing, WindowTrace trace) {
    this.bearing = bearing;
    this.trace = trace;
  }

  /**
   * The window of a shot.
   *
   * @param shot from where, with which spin, to what end, in which conditions
   * @param bearing radians to the hitter's left of straight
   * @param box the launches that are looked through
   * @return the window, which may be empty
   */
  public static LaunchWindow of(Shot shot, double bearing, LaunchBox box) {
    return found(shot, bearing, box, CLOSE);
  }

  /** The same to some in a thousand of its size, for half the flights: to see how it changes. */
  static LaunchWindow roughly(Shot shot, double bearing) {
    return found(shot, bearing, LaunchBox.EVERY_SHOT, LESS_CLOSE);
  }

  private static LaunchWindow found(
      Shot shot, double bearing, LaunchBox box, WindowTrace.Depth close) {
    WindowTrace wide =
        new WindowTrace(new LaunchTable(shot, bearing, box, POINTS)::margin, box, WIDE);
    return wide.area() > 0
        ? flown(shot, bearing, wide.around(), close)
        : new LaunchWindow(bearing, wide);
  }

  /** The same by flights alone on a grid of 2^depth by 2^depth: slow, to compare. */
  static LaunchWindow flown(Shot shot, double bearing, LaunchBox box, int depth) {
    return flown(shot, bearing, box, new WindowTrace.Depth(WIDE.coarse(), depth));
  }

  private static LaunchWindow flown(
      Shot shot, double bearing, LaunchBox box, WindowTrace.Depth depth) {
    ShotTrial trial = shot.trial();
    return new LaunchWindow(
        bearing,
        new WindowTrace((speed, elevation) -> trial.margin(speed, elevation, bearing), box, depth));
  }

  /**
   * What the shot forgives.
   *
   * @return the area in metres per second times degrees, 0 if nothing succeeds
   */
  public double area() {
    return Math.toDegrees(trace.area());
  }

  /**
   * Whether no launch succeeds.
   *
   * @return true if the window is empty
   */
  public boolean isEmpty() {
    return !(trace.area() > 0);
  }

  /**
   * The smallest box around the window.
   *
   * @return speeds and elevations
   * @throws IllegalStateException if the window is empty
   */
  public LaunchBox bounds() {
    if (isEmpty()) {
      throw new IllegalStateException("An empty window has no bounds; ask isEmpty first.");
    }
    return trace.bounds();
  }

  /**
   * The bearing that it holds for.
   *
   * @return radians to the hitter's left of straight
   */
  public double bearing() {
    return bearing;
  }

  /**
   * The edge of the region, in no order.
   *
   * @return pieces of edge
   */
  public List<Edge> edges() {
    return trace.edges();
  }
}
