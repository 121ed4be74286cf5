package rallywright.acceptance;

import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * Times in milliseconds, in order.
 *
 * @param sorted the times
 */
record Times(List<Double> sorted) {

  Times {
    sorted = List.copyOf(sorted);
  }

  /** Of any times. */
  static Times of(Collection<Double> times) {
    return new Times(times.stream().sorted().toList());
  }

  /** The smallest time that at least this share of all does not exceed. */
  double at(double share) {
    int place = (int) Math.ceil(share * sorted.size()) - 1;
    return sorted.isEmpty() ? Double.NaN : sorted.get(Math.max(0, place));
  }

  /** How many a second, one after the other. */
  double aSecond() {
    double sum = 0;
    for (double each : sorted) {
      sum += each;
    }
    return sorted.size() * 1000.0 / sum;
  }

  /** A row of a table: number, p50, p99, longest. */
  String row() {
    return "%d | %.1f | %.1f | %.1f"
        .formatted(sorted.size(), at(0.5), at(0.99), at(1))
        .toString()
        .toLowerCase(Locale.ROOT);
  }
}
