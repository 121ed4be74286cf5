package rallywright.engine.flight;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.ToDoubleFunction;

/**
 * Climbs to the top of a function of three numbers that has no derivative to offer: J. A. Nelder
 * and R. Mead, <em>A simplex method for function minimization</em>, Computer Journal 7:308 (1965),
 * with their usual factors (cited from memory).
 */
final class SimplexClimb {

  private static final int DIMENSIONS = 3;
  private static final int MOST_STEPS = 45;

  private final ToDoubleFunction<Vector> height;
  private final double done;
  private final Corner[] corners = new Corner[DIMENSIONS + 1];

  /** A point and how high the function is there. */
  record Corner(Vector at, double height) {}

  /**
   * A climb that stops where corners differ by less than a height.
   *
   * @param height the function
   * @param done the smallest difference in height that matters
   */
  SimplexClimb(ToDoubleFunction<Vector> height, double done) {
    this.height = height;
    this.done = done;
  }

  /** The highest point found from a start, with first steps of a length in each dimension. */
  Corner from(Vector start, double step) {
    corners[0] = corner(start);
    corners[1] = corner(start.plus(new Vector(step, 0, 0)));
    corners[2] = corner(start.plus(new Vector(0, step, 0)));
    corners[3] = corner(start.plus(new Vector(0, 0, step)));
    sort();
    for (int steps = 0; steps < MOST_STEPS && !small(); steps++) {
      move();
      sort();
    }
    return corners[0];
  }

  private boolean small() {
    return corners[0].height() - corners[DIMENSIONS].height() < done;
  }

  private void sort() {
    Arrays.sort(corners, Comparator.comparingDouble(Corner::height).reversed());
  }

  private void move() {
    Corner worst = corners[DIMENSIONS];
    Corner mirrored = along(-1);
    if (mirrored.height() > corners[0].height()) {
      Corner stretched = along(-2);
      corners[DIMENSIONS] = stretched.height() > mirrored.height() ? stretched : mirrored;
    } else if (mirrored.height() > corners[DIMENSIONS - 1].height()) {
      corners[DIMENSIONS] = mirrored;
    } else {
      Corner drawn = along(mirrored.height() > worst.height() ? -0.5 : 0.5);
      if (drawn.height() > Math.max(worst.height(), mirrored.height())) {
        corners[DIMENSIONS] = drawn;
      } else {
        shrink();
      }
    }
  }

  /** From the middle of the better corners toward the worst, by a share of the way. */
  private Corner along(double share) {
    Vector middle = Vector.ZERO;
    for (int k = 0; k < DIMENSIONS; k++) {
      middle = middle.plus(corners[k].at().times(1.0 / DIMENSIONS));
    }
    return corner(between(middle, corners[DIMENSIONS].at(), share));
  }

  private void shrink() {
    for (int k = 1; k <= DIMENSIONS; k++) {
      corners[k] = corner(between(corners[0].at(), corners[k].at(), 0.5));
    }
  }

  private static Vector between(Vector from, Vector to, double share) {
    return from.times(1 - share).plus(to.times(share));
  }

  private Corner corner(Vector at) {
    return new Corner(at, height.applyAsDouble(at));
  }
}
