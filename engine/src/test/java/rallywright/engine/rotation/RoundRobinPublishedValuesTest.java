package rallywright.engine.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoundRobinPublishedValuesTest {

  /** The circle method written out for 6 and 8 entrants, the textbook schedule. */
  private static final String SIX =
      "1-6 2-5 3-4 / 1-5 6-4 2-3 / 1-4 5-3 6-2 / 1-3 4-2 5-6 / 1-2 3-6 4-5";

  private static final String EIGHT =
      "1-8 2-7 3-6 4-5 / 1-7 8-6 2-5 3-4 / 1-6 7-5 8-4 2-3 / 1-5 6-4 7-3 8-2"
          + " / 1-4 5-3 6-2 7-8 / 1-3 4-2 5-8 6-7 / 1-2 3-8 4-7 5-6";

  @Test
  void circleMethod_ofSixAndEight_isTheTextbookSchedule() {
    assertThat(written(6)).isEqualTo(SIX);
    assertThat(written(8)).isEqualTo(EIGHT);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 7, 12, 39, 40})
  void everybody_meetsEverybodyOnce(int entrants) {
    Set<Set<Integer>> meetings = new HashSet<>();
    for (List<RoundRobin.Meeting<Integer>> round : RoundRobin.rounds(numbers(entrants))) {
      Set<Integer> seen = new HashSet<>();
      for (RoundRobin.Meeting<Integer> meeting : round) {
        assertThat(seen.add(meeting.one()) && seen.add(meeting.other())).isTrue();
        assertThat(meetings.add(Set.of(meeting.one(), meeting.other()))).isTrue();
      }
      assertThat(seen).hasSize(entrants - entrants % 2);
    }
    assertThat(meetings).hasSize(entrants * (entrants - 1) / 2);
  }

  @Test
  void fewerThanTwoOrOneTwice_areRefused() {
    assertThatThrownBy(() -> RoundRobin.rounds(List.of(1))).hasMessageContaining("Maybe");
    assertThatThrownBy(() -> RoundRobin.rounds(List.of(1, 1))).hasMessageContaining("[1, 1]");
  }

  private static List<Integer> numbers(int count) {
    return IntStream.rangeClosed(1, count).boxed().toList();
  }

  private static String written(int entrants) {
    Stream<String> rounds =
        RoundRobin.rounds(numbers(entrants)).stream()
            .map(
                round ->
                    round.stream()
                        .map(meeting -> meeting.one() + "-" + meeting.other())
                        .collect(Collectors.joining(" ")));
    return rounds.collect(Collectors.joining(" / "));
  }
}
