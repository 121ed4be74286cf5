package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.List;

/**
 * Everybody against everybody once, by the circle method: the first entrant stays, the others move
 * on by one place from round to round, and those who face each other meet.
 *
 * <p>With an odd number one has a bye in each round.
 */
public final class RoundRobin {

  private RoundRobin() {}

  /**
   * Two entrants who meet.
   *
   * @param one an entrant
   * @param other the other one
   * @param <T> a player, or a pair that stays together
   */
  public record Meeting<T>(T one, T other) {}

  /**
   * The rounds of a round robin.
   *
   * @param entrants two or more, each once
   * @param <T> a player, or a pair that stays together
   * @return for an even number one round less than entrants, for an odd number as many
   * @throws IllegalArgumentException if there are fewer than two or one is named twice
   */
  public static <T> List<List<Meeting<T>>> rounds(List<T> entrants) {
    if (entrants.size() < 2 || entrants.stream().distinct().count() != entrants.size()) {
      throw new IllegalArgumentException(
          "The entrants (%s) must be two or more different ones. Maybe one is named twice."
              .formatted(entrants));
    }
    int places = entrants.size() + entrants.size() % 2;
    List<List<Meeting<T>>> rounds = new ArrayList<>();
    for (int round = 0; round < places - 1; round++) {
      List<Meeting<T>> meetings = new ArrayList<>();
      for (int place = 0; place < places / 2; place++) {
        int one = entrantAt(place, round, places);
        int other = entrantAt(places - 1 - place, round, places);
        if (Math.max(one, other) < entrants.size()) {
          meetings.add(new Meeting<>(entrants.get(one), entrants.get(other)));
        }
      }
      rounds.add(List.copyOf(meetings));
    }
    return List.copyOf(rounds);
  }

  private static int entrantAt(int place, int round, int places) {
    return place == 0 ? 0 : 1 + Math.floorMod(place - 1 - round, places - 1);
  }
}
