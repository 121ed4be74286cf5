package rallywright.engine.flight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The launches with which a shot does all that is asked: a region of speed and elevation at one
 * bearing. Its area is what the shot forgives.
 *
 * <p>For the maintainer: the region is found by halving cells where its edge may run, from a grid
 * of 64 by 64 to one of 256 by 256; in the finest cells the edge is a straight line between the
 * zeros of the margin on the cell's sides. Each corner is flown once.
 */
public final class LaunchWindow {

  private static final int COARSE = 6;
  private static final int FINE = 8;

  private final ShotTrial trial;
  private final double bearing;
  private final LaunchBox box;
  private final int cells;
  private final double[] margins;
  private final List<Edge> edges = new ArrayList<>();
  private double area;
  private double slowest = Double.POSITIVE_INFINITY;
  private double fastest = Double.NEGATIVE_INFINITY;
  private double lowest = Double.POSITIVE_INFINITY;
  private double highest = Double.NEGATIVE_INFINITY;
  private int flights;

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

  private LaunchWindow(Shot shot, double bearing, LaunchBox box, int depth) {
    trial = shot.trial();
    this.bearing = bearing;
    this.box = box;
    cells = 1 << depth;
    margins = new double[(cells + 1) * (cells + 1)];
    Arrays.fill(margins, Double.NaN);
    int size = cells >> COARSE;
    for (int i = 0; i < cells; i += size) {
      for (int j = 0; j < cells; j += size) {
        split(i, j, size, Double.POSITIVE_INFINITY);
      }
    }
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
    return new LaunchWindow(shot, bearing, box, FINE);
  }

  /**
   * The same on a grid half as fine, for a picture that is dragged: its area is right to some in a
   * hundred.
   *
   * @param shot from where, with which spin, to what end, in which conditions
   * @param bearing radians to the hitter's left of straight
   * @param box the launches that are looked through
   * @return the window, which may be empty
   */
  public static LaunchWindow preview(Shot shot, double bearing, LaunchBox box) {
    return new LaunchWindow(shot, bearing, box, FINE - 1);
  }

  /** The same on a grid of 2^depth by 2^depth, to see how close the usual grid comes. */
  static LaunchWindow of(Shot shot, double bearing, LaunchBox box, int depth) {
    return new LaunchWindow(shot, bearing, box, depth);
  }

  private void split(int i, int j, int size, double parentSpan) {
    double a = margin(i, j);
    double b = margin(i + size, j);
    double c = margin(i + size, j + size);
    double d = margin(i, j + size);
    double low = Math.min(Math.min(a, b), Math.min(c, d));
    double high = Math.max(Math.max(a, b), Math.max(c, d));
    double span = high - low;
    double near = low > 0 ? low : high < 0 ? -high : 0;
    if (size > 1 && near <= Math.min(parentSpan, 2 * span)) {
      int half = size / 2;
      split(i, j, half, span);
      split(i + half, j, half, span);
      split(i + half, j + half, half, span);
      split(i, j + half, half, span);
    } else if (high > 0) {
      new Marching(i, j, size).add(new double[] {a, b, c, d});
    }
  }

  private double margin(int i, int j) {
    int at = i * (cells + 1) + j;
    if (Double.isNaN(margins[at])) {
      flights++;
      margins[at] = trial.margin(speed(i), elevation(j), bearing);
    }
    return margins[at];
  }

  private double speed(double i) {
    return box.slowest() + i / cells * (box.fastest() - box.slowest());
  }

  private double elevation(double j) {
    return box.lowest() + j / cells * (box.highest() - box.lowest());
  }

  /**
   * What the shot forgives.
   *
   * @return the area in metres per second times degrees, 0 if nothing succeeds
   */
  public double area() {
    return Math.toDegrees(area);
  }

  /**
   * Whether no launch succeeds.
   *
   * @return true if the window is empty
   */
  public boolean isEmpty() {
    return !(area > 0);
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
    return new LaunchBox(slowest, fastest, lowest, highest);
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
    return List.copyOf(edges);
  }

  /** How many flights were flown. */
  int flights() {
    return flights;
  }

  /** The part of a cell in which the margin is above 0, between straight edges. */
  private final class Marching {
    private static final int[][] SIDES = {{0, 1}, {1, 2}, {2, 3}, {3, 0}};
    private final double[] is;
    private final double[] js;
    private final List<double[]> ring = new ArrayList<>(8);

    Marching(int i, int j, int size) {
      is = new double[] {i, i + size, i + size, i};
      js = new double[] {j, j, j + size, j + size};
    }

    /** Walks round the cell: inner corners and the zeros on the sides, in order, are the region. */
    void add(double[] m) {
      List<double[]> zeros = new ArrayList<>(4);
      for (int[] side : SIDES) {
        int p = side[0];
        int q = side[1];
        if (m[p] > 0) {
          ring.add(new double[] {is[p], js[p]});
        }
        if (m[p] > 0 != m[q] > 0) {
          double share = m[p] / (m[p] - m[q]);
          double[] zero = {is[p] + share * (is[q] - is[p]), js[p] + share * (js[q] - js[p])};
          ring.add(zero);
          zeros.add(zero);
        }
      }
      addRing();
      for (int k = 0; k + 1 < zeros.size(); k += 2) {
        edges.add(new Edge(corner(zeros.get(k)), corner(zeros.get(k + 1))));
      }
    }

    private void addRing() {
      double twice = 0;
      for (int k = 0; k < ring.size(); k++) {
        double[] p = ring.get(k);
        double[] q = ring.get((k + 1) % ring.size());
        twice += p[0] * q[1] - q[0] * p[1];
        Corner corner = corner(p);
        slowest = Math.min(slowest, corner.speed());
        fastest = Math.max(fastest, corner.speed());
        lowest = Math.min(lowest, corner.elevation());
        highest = Math.max(highest, corner.elevation());
      }
      double cell =
          (box.fastest() - box.slowest()) * (box.highest() - box.lowest()) / cells / cells;
      area += twice / 2 * cell;
    }

    private Corner corner(double[] at) {
      return new Corner(speed(at[0]), elevation(at[1]));
    }
  }
}
