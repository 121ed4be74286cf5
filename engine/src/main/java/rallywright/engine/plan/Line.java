package rallywright.engine.plan;

import java.util.List;
import java.util.stream.Stream;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;

/** The two ways to split a court into lanes; a straight and a cross lane never share a court. */
public enum Line {
  /** Down the line: a court has two straight lanes. */
  STRAIGHT("straight"),
  /** Cross-court: the two diagonals. */
  CROSS("cross-court");

  private final String words;

  Line(String words) {
    this.words = words;
  }

  /**
   * The line in a coach's words.
   *
   * @return for example "cross-court"
   */
  public String words() {
    return words;
  }

  /**
   * The line to which a lane belongs.
   *
   * @param lane a lane
   * @return its line
   */
  public static Line of(Lane lane) {
    return lane.direction().isCross() ? CROSS : STRAIGHT;
  }

  /**
   * The lanes of one court on which a drill is played along this line.
   *
   * @param drill the drill
   * @return one or two lanes that fit on one court together; empty if the drill is not played so
   */
  public List<Lane> lanesOf(Drill drill) {
    return Stream.of(Lane.values())
        .filter(lane -> of(lane) == this && drill.directions().contains(lane.direction()))
        .toList();
  }
}
