package rallywright.engine.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rallywright.engine.rotation.Standings.Line;
import rallywright.engine.rotation.Standings.Outcome;

/** Each rule of the tie-break decides once; the examples are worked by hand. */
class StandingsTest {

  private static List<Line<String>> table(String entrants, String... results) {
    List<Outcome<String>> outcomes = new ArrayList<>();
    for (String result : results) {
      String[] parts = result.split("[ -]", -1);
      outcomes.add(
          new Outcome<>(
              List.of(parts[0].split("\\+", -1)),
              List.of(parts[1].split("\\+", -1)),
              Integer.parseInt(parts[2]),
              Integer.parseInt(parts[3])));
    }
    return Standings.of(entrants.chars().mapToObj(Character::toString).toList(), outcomes);
  }

  private static String order(List<Line<String>> table) {
    StringBuilder text = new StringBuilder();
    table.forEach(line -> text.append(line.place()).append(line.entrant()));
    return text.toString();
  }

  @Test
  void matchesWon_decideFirst_andPointsAreCounted() {
    List<Line<String>> table = table("ABC", "A B 11-9", "A C 11-9", "B C 11-0");
    assertThat(order(table)).isEqualTo("1A2B3C");
    assertThat(table.get(1)).isEqualTo(new Line<>(2, "B", 2, 1, 9));
  }

  @Test
  void matchAgainstEachOther_decidesBeforeThePointDifference() {
    // A and B have two wins each; B has the better difference, A has beaten B.
    List<Line<String>> table =
        table("ABCD", "A B 11-9", "A C 5-11", "A D 11-9", "B C 11-0", "B D 11-0", "C D 9-11");
    assertThat(order(table).substring(0, 4)).isEqualTo("1A2B");
  }

  @Test
  void threeInACircle_arePartedByThePointDifference() {
    List<Line<String>> table = table("ABC", "A B 11-2", "B C 11-5", "C A 11-9");
    assertThat(order(table)).isEqualTo("1A2B3C");
    // A +9 -2 = 7, B -9 +6 = -3, C -6 +2 = -4.
    assertThat(table).extracting(Line::difference).containsExactly(7, -3, -4);
  }

  @Test
  void differenceAgainstEachOther_decidesWhereTheWholeIsEqual() {
    // A, B and C beat each other in a circle and each beats D; all differences are equal but for
    // those against each other.
    List<Line<String>> table =
        table("ABCD", "A B 11-1", "B C 11-4", "C A 11-8", "A D 11-10", "B D 11-3", "C D 11-6");
    // Against each other: A +10 -3 = 7, B -10 +7 = -3, C -7 +3 = -4. With D: 8, 5, 1.
    assertThat(order(table)).isEqualTo("1A2B3C4D");
    List<Line<String>> equal =
        table("ABCD", "A B 11-1", "B C 11-4", "C A 11-8", "A D 11-10", "B D 11-0", "C D 11-9");
    // All: A 8, B 8, C -2: A and B are parted anew, by their own match.
    assertThat(order(equal)).isEqualTo("1A2B3C4D");
    assertThat(equal).extracting(Line::difference).startsWith(8, 8);
  }

  @Test
  void differenceAgainstTheNextAbove_decidesLast() {
    // B and C did not meet and are equal in all else; against A, B lost by less.
    List<Line<String>> table =
        table("ABCD", "A B 11-9", "A C 11-4", "A D 11-0", "B D 11-8", "C D 11-3");
    assertThat(table.get(1)).isEqualTo(new Line<>(2, "B", 2, 1, 1));
    assertThat(table.get(2)).isEqualTo(new Line<>(3, "C", 2, 1, 1));
    assertThat(order(table)).isEqualTo("1A2B3C4D");
  }

  @Test
  void thoseWhomNothingParts_shareAPlace() {
    List<Line<String>> table = table("ABC", "A B 11-9", "B C 11-9", "C A 11-9");
    assertThat(order(table)).isEqualTo("1A1B1C");
    assertThat(order(table("AB"))).isEqualTo("1A1B");
  }

  @Test
  void changingPartners_eachCountTheMatch() {
    List<Line<String>> table = table("ABCD", "A+B C+D 11-7", "A+C B+D 11-8", "A+D B+C 5-11");
    assertThat(table.get(0).won()).isEqualTo(2);
    assertThat(table).extracting(Line::played).containsOnly(3);
    assertThat(table.stream().mapToInt(Line::difference).sum()).isZero();
    // A +4 +3 -6 = 1, B +4 -3 +6 = 7, C -4 +3 +6 = 5; two wins each.
    assertThat(order(table)).isEqualTo("1B2C3A4D");
  }

  @Test
  void drawOrNegativePoints_areRefused() {
    assertThatThrownBy(() -> table("AB", "A B 9-9")).hasMessageContaining("(9-9)");
    assertThatThrownBy(() -> new Outcome<>(List.of("A"), List.of("B"), -1, 3))
        .hasMessageContaining("Maybe");
  }
}
