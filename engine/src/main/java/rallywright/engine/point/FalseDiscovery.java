package rallywright.engine.point;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which of many differences may be named, so that of those named only a stated share is chance.
 *
 * <p>The step-up rule of Benjamini and Hochberg, JRSS-B 57 (1995): with m chances sorted upwards,
 * all up to the last k with p(k) ≤ level · k / m are kept. Where nothing is really different, the
 * chance to name anything at all is at most the level.
 */
public final class FalseDiscovery {

  private FalseDiscovery() {}

  /**
   * The places of the chances that are kept.
   *
   * @param chances for each difference the chance to see one as large where there is none, 0 to 1
   * @param level the share of false ones among those kept, above 0 and below 1
   * @return places from 0, the smallest chance first
   * @throws IllegalArgumentException if a chance or the level lies outside
   */
  public static List<Integer> kept(List<Double> chances, double level) {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException(
          "The level (%s) must lie between 0 and 1. Maybe 0.1.".formatted(level));
    }
    for (double chance : chances) {
      if (!(chance >= 0 && chance <= 1)) {
        throw new IllegalArgumentException(
            "The chance (%s) must lie from 0 to 1.".formatted(chance));
      }
    }
    List<Integer> order =
        IntStream.range(0, chances.size())
            .boxed()
            .sorted(Comparator.comparing(chances::get))
            .toList();
    int keep = 0;
    for (int rank = 1; rank <= order.size(); rank++) {
      if (chances.get(order.get(rank - 1)) <= level * rank / order.size()) {
        keep = rank;
      }
    }
    return new ArrayList<>(order.subList(0, keep));
  }
}
