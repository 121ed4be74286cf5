package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKind;

/**
 * A scored drill for two, played along one line.
 *
 * @param drill the drill
 * @param line straight or cross-court
 */
public record DrillLine(Drill drill, Line line) {

  /** Checks that the drill is a game of two and is played along the line. */
  public DrillLine {
    if (!isGameOfTwo(drill)) {
      throw new IllegalArgumentException(
          "%s is not a scored game of two. Maybe choose another drill.".formatted(drill.name()));
    }
    if (line.lanesOf(drill).isEmpty()) {
      throw new IllegalArgumentException(
          "%s is not played %s. Maybe choose the other direction."
              .formatted(drill.name(), line.words()));
    }
  }

  /**
   * Whether a drill can be planned on lanes.
   *
   * @param drill any drill
   * @return true for scored games of two players
   */
  public static boolean isGameOfTwo(Drill drill) {
    return drill.scored().map(game -> game.layout().players() == 2).orElse(false);
  }

  /**
   * All lines of the drills that can be planned on lanes, in the drills' order.
   *
   * @param drills any drills
   * @return straight before cross-court
   */
  static List<DrillLine> allOf(List<Drill> drills) {
    List<DrillLine> lines = new ArrayList<>();
    for (Drill drill : drills) {
      for (Line line : Line.values()) {
        if (isGameOfTwo(drill) && !line.lanesOf(drill).isEmpty()) {
          lines.add(new DrillLine(drill, line));
        }
      }
    }
    return lines;
  }

  DrillForm.Scored game() {
    return drill.scored().orElseThrow();
  }

  /** How many pairs can play at once. */
  int capacity(int courts) {
    return courts * line.lanesOf(drill).size();
  }

  /**
   * The place of a pair. Pairs spread over the courts first, then share them; from stint to stint
   * the two lanes of a court change hands.
   */
  CourtLane place(int pair, int stint, int courts) {
    List<Lane> lanes = line.lanesOf(drill);
    int lane = (pair / courts + stint) % lanes.size();
    return new CourtLane(pair % courts + 1, lanes.get(lane));
  }

  /** Games that a pair plays before it changes opponents: one in each role of an uneven drill. */
  int turnsPerStint() {
    return turnsPerStint(drill);
  }

  static int turnsPerStint(Drill drill) {
    boolean even = drill.layout().map(layout -> layout.isEven()).orElse(true);
    return even || drill.kind() == DrillKind.FULL_GAME ? 1 : 2;
  }

  String words() {
    return drill.name() + ", " + line.words();
  }
}
