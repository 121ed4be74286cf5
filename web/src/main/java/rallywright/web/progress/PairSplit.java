package rallywright.web.progress;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import rallywright.engine.club.PlayerId;
import rallywright.engine.reading.DoublesOutlook;
import rallywright.engine.reading.PointReading;
import rallywright.web.page.Estimate;

/**
 * One of the three ways in which four players make a doubles game.
 *
 * @param sides who plays with whom
 * @param estimate how many games in 10 the pair named first would win, as a bar with its sentence
 */
public record PairSplit(String sides, Estimate estimate) {

  private static final Estimate.Scale GAMES = new Estimate.Scale(0, 1, "none", "10 in 10");
  private static final double EVEN = 0.5;

  /** Two pairs and how the game between them stands. */
  private record Split(List<PlayerId> a, List<PlayerId> b, DoublesOutlook outlook) {
    double unevenness() {
      return Math.abs(outlook.chance() - EVEN);
    }
  }

  /**
   * The three splits of four different players, the most even first.
   *
   * @throws IllegalArgumentException unless there are four players, all different
   */
  static List<PairSplit> of(
      List<PlayerId> four, PointReading points, Function<PlayerId, String> names) {
    if (four.stream().distinct().count() != 4 || four.size() != 4) {
      throw new IllegalArgumentException(
          "A doubles game needs four different players, but %d of %d places have their own."
              .formatted(four.stream().distinct().count(), four.size()));
    }
    PlayerId first = four.get(0);
    return Stream.of(1, 2, 3)
        .map(mate -> split(List.of(first, four.get(mate)), four, points))
        .sorted(Comparator.comparingDouble(Split::unevenness))
        .map(split -> shown(split, names))
        .toList();
  }

  private static Split split(List<PlayerId> a, List<PlayerId> four, PointReading points) {
    List<PlayerId> b = four.stream().filter(each -> !a.contains(each)).toList();
    DoublesOutlook outlook = points.doubles(a, b);
    return outlook.chance() >= EVEN
        ? new Split(a, b, outlook)
        : new Split(b, a, points.doubles(b, a));
  }

  private static PairSplit shown(Split split, Function<PlayerId, String> names) {
    DoublesOutlook outlook = split.outlook();
    String pair = pair(split.a(), names);
    return new PairSplit(
        pair + " v " + pair(split.b(), names),
        Estimate.ofChance(
            GAMES,
            outlook.low(),
            outlook.chance(),
            outlook.high(),
            "%s would win about %d games in 100, likely %d to %d."
                .formatted(
                    pair,
                    hundred(outlook.chance()),
                    hundred(outlook.low()),
                    hundred(outlook.high()))));
  }

  /** No game is said to be won for sure. */
  private static long hundred(double chance) {
    return Math.max(1, Math.min(99, Math.round(100 * chance)));
  }

  private static String pair(List<PlayerId> two, Function<PlayerId, String> names) {
    return names.apply(two.get(0)) + " and " + names.apply(two.get(1));
  }
}
