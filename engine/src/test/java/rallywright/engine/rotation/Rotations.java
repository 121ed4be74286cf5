package rallywright.engine.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import rallywright.engine.club.PlayerId;

/** Rotations for tests, and what must hold for each of them. */
final class Rotations {

  /** Enough for a law to hold, little enough for hundreds of tries. */
  static final SearchEffort QUICK = new SearchEffort(1, 20_000);

  private Rotations() {}

  static PlayerId id(int number) {
    return new PlayerId(String.valueOf(number));
  }

  static Pairing pair(int one, int other) {
    return new Pairing(id(one), id(other));
  }

  static RotationSchedule found(RotationWish wish) {
    return found(wish, SearchEffort.USUAL);
  }

  static RotationSchedule found(RotationWish wish, SearchEffort effort) {
    RotationAnswer answer = RotationSearch.find(wish, effort, SearchWatch.PATIENT);
    assertThat(answer).isInstanceOf(RotationAnswer.Found.class);
    return ((RotationAnswer.Found) answer).schedule();
  }

  static List<String> refused(RotationWish wish) {
    RotationAnswer answer = RotationSearch.find(wish, QUICK, SearchWatch.PATIENT);
    assertThat(answer).isInstanceOf(RotationAnswer.Refused.class);
    return ((RotationAnswer.Refused) answer).sentences();
  }

  /** Players named "1" to "n" with strengths drawn by a seed. */
  static List<RotationPlayer> players(int count, long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    return IntStream.rangeClosed(1, count)
        .mapToObj(number -> RotationPlayer.of(id(number), 3 * (dice.nextDouble() - 0.5)))
        .toList();
  }

  /** Nobody twice in a round; everybody who is there is placed or sits out, and nobody else. */
  static void assertEverybodyIsPlacedOnce(RotationWish wish, RotationSchedule schedule) {
    assertThat(schedule.rounds()).hasSize(wish.rounds());
    for (RotationRound round : schedule.rounds()) {
      List<PlayerId> named = new ArrayList<>(round.sitting());
      Set<List<Integer>> places = new HashSet<>();
      for (RotationMatch match : round.matches()) {
        named.addAll(match.players());
        assertThat(match.players()).hasSize(wish.game().size());
        assertThat(match.court()).isBetween(1, wish.courts());
        assertThat(places.add(List.of(match.court(), match.lane()))).isTrue();
      }
      assertThat(named)
          .doesNotHaveDuplicates()
          .containsExactlyInAnyOrderElementsOf(
              wish.players().stream()
                  .filter(player -> player.isThere(round.number()))
                  .map(RotationPlayer::id)
                  .toList());
      assertThat(round.matches()).hasSize(wish.game().groups(named.size(), wish.courts()));
    }
  }

  static Map<PlayerId, Integer> sitOuts(RotationWish wish, RotationSchedule schedule) {
    Map<PlayerId, Integer> sits = new HashMap<>();
    wish.players().forEach(player -> sits.put(player.id(), 0));
    for (RotationRound round : schedule.rounds()) {
      round.sitting().forEach(player -> sits.merge(player, 1, Integer::sum));
    }
    return sits;
  }
}
