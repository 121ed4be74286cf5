package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rallywright.engine.club.PlayerId;

/**
 * Puts matches that are all to be played on fewer courts than would hold a whole round of them. In
 * each round the matches of those who have played least and waited longest come first, so that
 * nobody waits much longer than others.
 */
final class CourtQueue {

  /** Two sides that are to meet. */
  record Fixture(List<PlayerId> a, List<PlayerId> b) {
    List<PlayerId> players() {
      List<PlayerId> all = new ArrayList<>(a);
      all.addAll(b);
      return all;
    }
  }

  private final int courts;
  private final List<PlayerId> everybody;
  private final List<Fixture> waiting;
  private final Map<PlayerId, Integer> played = new HashMap<>();
  private final Map<PlayerId, Integer> lastRound = new HashMap<>();
  private final List<RotationRound> rounds = new ArrayList<>();

  /**
   * A queue.
   *
   * @param courts matches at once
   * @param everybody all who are there
   * @param fixtures what is to be played, in order of preference
   */
  CourtQueue(int courts, List<PlayerId> everybody, List<Fixture> fixtures) {
    this.courts = courts;
    this.everybody = List.copyOf(everybody);
    this.waiting = new ArrayList<>(fixtures);
  }

  /** Takes up rounds that were played: their matches are done. */
  CourtQueue after(List<RotationRound> kept) {
    for (RotationRound round : kept) {
      rounds.add(round);
      for (RotationMatch match : round.matches()) {
        waiting.remove(new Fixture(match.a(), match.b()));
        note(match.players(), round.number());
      }
    }
    return this;
  }

  /** Rounds until all is played, at most so many in all. */
  List<RotationRound> rounds(int most) {
    while (!waiting.isEmpty() && rounds.size() < most) {
      rounds.add(next(rounds.size() + 1));
    }
    return List.copyOf(rounds);
  }

  private RotationRound next(int number) {
    List<RotationMatch> matches = new ArrayList<>();
    Set<PlayerId> busy = new HashSet<>();
    while (matches.size() < courts) {
      Fixture due =
          waiting.stream()
              .filter(each -> each.players().stream().noneMatch(busy::contains))
              .min(
                  Comparator.comparingInt((Fixture each) -> sum(each, played))
                      .thenComparingInt(each -> sum(each, lastRound)))
              .orElse(null);
      if (due == null) {
        break;
      }
      waiting.remove(due);
      busy.addAll(due.players());
      matches.add(new RotationMatch(matches.size() + 1, 1, due.a(), due.b(), RotationMatch.EVEN));
    }
    matches.forEach(match -> note(match.players(), number));
    return new RotationRound(
        number, matches, everybody.stream().filter(each -> !busy.contains(each)).toList());
  }

  private static int sum(Fixture fixture, Map<PlayerId, Integer> numbers) {
    return fixture.players().stream().mapToInt(each -> numbers.getOrDefault(each, 0)).sum();
  }

  private void note(List<PlayerId> players, int round) {
    for (PlayerId player : players) {
      played.merge(player, 1, Integer::sum);
      lastRound.put(player, round);
    }
  }
}
