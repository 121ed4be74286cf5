package rallywright.engine.flight;

import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import rallywright.engine.flight.LaunchWindow.Corner;

/**
 * What a window forgives from its best place: where it is widest in speed, and there the middle.
 *
 * @param perSpeed half the width in speed, as a share of the speed in the middle
 * @param perElevation half the height in elevation through that middle, in radians
 */
record Forgiven(double perSpeed, double perElevation) {

  private static final int ROWS = 200;

  /** A stretch of launches that succeed. */
  private record Stretch(double from, double to) {
    double length() {
      return to - from;
    }

    double middle() {
      return (from + to) / 2;
    }
  }

  static Forgiven by(LaunchWindow window) {
    if (window.isEmpty()) {
      return new Forgiven(0, 0);
    }
    LaunchBox bounds = window.bounds();
    ToDoubleFunction<Corner> speed = Corner::speed;
    ToDoubleFunction<Corner> elevation = Corner::elevation;
    Stretch widest = new Stretch(0, 0);
    for (int row = 0; row < ROWS; row++) {
      double share = (row + 0.5) / ROWS;
      double at = bounds.lowest() + share * (bounds.highest() - bounds.lowest());
      Stretch here = longest(crossings(window, elevation, at, speed), bounds.fastest());
      widest = here.length() > widest.length() ? here : widest;
    }
    double middle = widest.middle();
    Stretch tallest = longest(crossings(window, speed, middle, elevation), bounds.highest());
    return new Forgiven(widest.length() / 2 / middle, tallest.length() / 2);
  }

  /** Where the edge has one coordinate at a value: the other coordinate there. */
  private static DoubleStream crossings(
      LaunchWindow window,
      ToDoubleFunction<Corner> one,
      double at,
      ToDoubleFunction<Corner> other) {
    return window.edges().stream()
        .filter(edge -> one.applyAsDouble(edge.from()) > at != one.applyAsDouble(edge.to()) > at)
        .mapToDouble(
            edge -> {
              double from = one.applyAsDouble(edge.from()) - at;
              double to = one.applyAsDouble(edge.to()) - at;
              double share = from / (from - to);
              return (1 - share) * other.applyAsDouble(edge.from())
                  + share * other.applyAsDouble(edge.to());
            });
  }

  /** Edges come in pairs, in and out; the last may be missing where the looked-through box ends. */
  private static Stretch longest(DoubleStream crossings, double end) {
    double[] sorted = crossings.sorted().toArray();
    Stretch longest = new Stretch(0, 0);
    for (int i = 0; i < sorted.length; i += 2) {
      Stretch next = new Stretch(sorted[i], i + 1 < sorted.length ? sorted[i + 1] : end);
      longest = next.length() > longest.length() ? next : longest;
    }
    return longest;
  }
}
