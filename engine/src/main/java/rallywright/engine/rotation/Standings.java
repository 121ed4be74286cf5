package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/**
 * Places after a round robin or a rotation, ties broken in the published order.
 *
 * <p>Order: matches won; then among those tied, matches won against each other; the point
 * difference of all matches; the point difference against each other; the point difference against
 * whoever is placed next above. As soon as one of these parts a tie, each part begins anew with the
 * first. Those whom nothing parts share a place. Source: USA Pickleball rule book 2026, 15.B.4
 * (order second-hand). The reading for rotating partners, that a match counts for each partner, is
 * an assumption of this project.
 *
 * @param <T> a player, or a pair that stays together
 */
public final class Standings<T> {

  private final List<T> everybody;
  private final List<Outcome<T>> outcomes;
  private final List<Line<T>> lines = new ArrayList<>();

  /**
   * How a match ended.
   *
   * @param a those on side A
   * @param b those on side B
   * @param pointsA points of side A, 0 or more
   * @param pointsB points of side B, 0 or more, not as many as A's
   * @param <T> a player, or a pair that stays together
   */
  public record Outcome<T>(List<T> a, List<T> b, int pointsA, int pointsB) {

    /** Refuses draws and negative points. */
    public Outcome {
      a = List.copyOf(a);
      b = List.copyOf(b);
      if (pointsA < 0 || pointsB < 0 || pointsA == pointsB) {
        throw new IllegalArgumentException(
            "The score (%d-%d) must have a winner and no negative points. Maybe it is mistyped."
                .formatted(pointsA, pointsB));
      }
    }
  }

  /**
   * One line of the table.
   *
   * @param place from 1; the same for those who stay tied
   * @param entrant who
   * @param played matches played
   * @param won matches won
   * @param difference points won less points lost
   * @param <T> a player, or a pair that stays together
   */
  public record Line<T>(int place, T entrant, int played, int won, int difference) {}

  private Standings(List<T> everybody, List<Outcome<T>> outcomes) {
    this.everybody = everybody;
    this.outcomes = List.copyOf(outcomes);
  }

  /**
   * The table.
   *
   * @param entrants everybody, each once; those without a match stand in it too
   * @param outcomes the matches that were played
   * @param <T> a player, or a pair that stays together
   * @return the lines, the first place first
   */
  public static <T> List<Line<T>> of(Collection<T> entrants, List<Outcome<T>> outcomes) {
    List<T> all = List.copyOf(entrants);
    Standings<T> standings = new Standings<>(all, outcomes);
    for (List<T> tied : standings.split(all, player -> standings.won(player, all))) {
      standings.place(tied);
    }
    return List.copyOf(standings.lines);
  }

  /** Places a group that has won equally many matches. */
  private void place(List<T> tied) {
    for (Criterion criterion : Criterion.values()) {
      List<List<T>> parts = split(tied, player -> value(criterion, player, tied));
      if (parts.size() > 1) {
        parts.forEach(this::place);
        return;
      }
    }
    int place = lines.size() + 1;
    for (T player : tied) {
      lines.add(
          new Line<>(
              place,
              player,
              (int) outcomes.stream().filter(outcome -> plays(outcome, player, everybody)).count(),
              won(player, everybody),
              difference(player, everybody)));
    }
  }

  private enum Criterion {
    WON_AGAINST_EACH_OTHER,
    DIFFERENCE_OF_ALL,
    DIFFERENCE_AGAINST_EACH_OTHER,
    DIFFERENCE_AGAINST_THE_NEXT_ABOVE
  }

  private int value(Criterion criterion, T player, List<T> tied) {
    return switch (criterion) {
      case WON_AGAINST_EACH_OTHER -> won(player, tied);
      case DIFFERENCE_OF_ALL -> difference(player, everybody);
      case DIFFERENCE_AGAINST_EACH_OTHER -> difference(player, tied);
      case DIFFERENCE_AGAINST_THE_NEXT_ABOVE ->
          lines.isEmpty() ? 0 : difference(player, List.of(lines.get(lines.size() - 1).entrant()));
    };
  }

  private List<List<T>> split(List<T> players, ToIntFunction<T> value) {
    TreeMap<Integer, List<T>> parts = new TreeMap<>(Collections.reverseOrder());
    for (T player : players) {
      parts.computeIfAbsent(value.applyAsInt(player), unused -> new ArrayList<>()).add(player);
    }
    return new ArrayList<>(parts.values());
  }

  private int won(T player, Collection<T> against) {
    int won = 0;
    for (Outcome<T> outcome : outcomes) {
      won += plays(outcome, player, against) && margin(outcome, player) > 0 ? 1 : 0;
    }
    return won;
  }

  private int difference(T player, Collection<T> against) {
    int difference = 0;
    for (Outcome<T> outcome : outcomes) {
      difference += plays(outcome, player, against) ? margin(outcome, player) : 0;
    }
    return difference;
  }

  private static <T> boolean plays(Outcome<T> outcome, T player, Collection<T> against) {
    return (outcome.a().contains(player) && outcome.b().stream().anyMatch(against::contains))
        || (outcome.b().contains(player) && outcome.a().stream().anyMatch(against::contains));
  }

  private static <T> int margin(Outcome<T> outcome, T player) {
    int margin = outcome.pointsA() - outcome.pointsB();
    return outcome.a().contains(player) ? margin : -margin;
  }
}
