package rallywright.engine.flight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import rallywright.engine.flight.LaunchWindow.Corner;
import rallywright.engine.flight.LaunchWindow.Edge;

/**
 * The region of a box of launches in which a margin is above 0.
 *
 * <p>For the maintainer: the region is found by halving cells where its edge may run, from a coarse
 * grid to a fine one; in the finest cells the edge is a straight line between the zeros of the
 * margin on the cell's sides. Each corner is asked once.
 */
final class WindowTrace {

  private static final double ROOM = 3;

  private final DoubleBinaryOperator margin;
  private final LaunchBox box;
  private final int cells;
  private final double[] margins;
  private final List<Edge> edges = new ArrayList<>();
  private double area;
  private double slowest = Double.POSITIVE_INFINITY;
  private double fastest = Double.NEGATIVE_INFINITY;
  private double lowest = Double.POSITIVE_INFINITY;
  private double highest = Double.NEGATIVE_INFINITY;

  /**
   * How many cells an axis has, as powers of two.
   *
   * @param coarse everywhere
   * @param fine where the edge runs
   */
  record Depth(int coarse, int fine) {}

  /**
   * Traces a region.
   *
   * @param margin of a speed and an elevation
   * @param box the launches that are looked through
   * @param depth how fine
   */
  WindowTrace(DoubleBinaryOperator margin, LaunchBox box, Depth depth) {
    this.margin = margin;
    this.box = box;
    cells = 1 << depth.fine();
    margins = new double[(cells + 1) * (cells + 1)];
    Arrays.fill(margins, Double.NaN);
    int size = cells >> depth.coarse();
    for (int i = 0; i < cells; i += size) {
      for (int j = 0; j < cells; j += size) {
        split(i, j, size, Double.POSITIVE_INFINITY);
      }
    }
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
      margins[at] = margin.applyAsDouble(speed(i), elevation(j));
    }
    return margins[at];
  }

  private double speed(double i) {
    return box.slowest() + i / cells * (box.fastest() - box.slowest());
  }

  private double elevation(double j) {
    return box.lowest() + j / cells * (box.highest() - box.lowest());
  }

  /** The area in metres per second times radians. */
  double area() {
    return area;
  }

  List<Edge> edges() {
    return List.copyOf(edges);
  }

  /** The smallest box around the region; there must be one. */
  LaunchBox bounds() {
    return new LaunchBox(slowest, fastest, lowest, highest);
  }

  /**
   * A box around the region with some cells of air on all sides, within what was looked through.
   */
  LaunchBox around() {
    double speed = ROOM * (box.fastest() - box.slowest()) / cells;
    double up = ROOM * (box.highest() - box.lowest()) / cells;
    return new LaunchBox(
        Math.max(box.slowest(), slowest - speed),
        Math.min(box.fastest(), fastest + speed),
        Math.max(box.lowest(), lowest - up),
        Math.min(box.highest(), highest + up));
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
