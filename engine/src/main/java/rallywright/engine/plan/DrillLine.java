package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.Layout;

/**
 * A drill for two, three or four, played along one line.
 *
 * @param drill the drill
 * @param line straight or cross-court
 */
public record DrillLine(Drill drill, Line line) {

  /** Checks that the drill lies on the court and is played along the line. */
  public DrillLine {
    if (!isPlayedOnCourt(drill)) {
      throw new IllegalArgumentException(
          "%s is a warm-up, not played along a line. Maybe choose another drill."
              .formatted(drill.name()));
    }
    if (line.lanesOf(drill).isEmpty()) {
      throw new IllegalArgumentException(
          "%s is not played %s. Maybe choose the other direction."
              .formatted(drill.name(), line.words()));
    }
  }

  /**
   * Whether a drill can be planned on lanes or courts.
   *
   * @param drill any drill
   * @return true for games and for drills in which players work together
   */
  public static boolean isPlayedOnCourt(Drill drill) {
    return drill.layout().isPresent() && !drill.kind().isWarmUp();
  }

  /**
   * All lines of the drills that can be planned, in the drills' order. A drill that takes the whole
   * court, or in which players work together, is offered once.
   *
   * @param drills any drills
   * @return straight before cross-court
   */
  static List<DrillLine> allOf(List<Drill> drills) {
    List<DrillLine> lines = new ArrayList<>();
    for (Drill drill : drills) {
      if (isPlayedOnCourt(drill)) {
        lines.addAll(linesOf(drill));
      }
    }
    return lines;
  }

  private static List<DrillLine> linesOf(Drill drill) {
    List<DrillLine> lines = new ArrayList<>();
    for (Line line : Line.values()) {
      boolean once = !isGameOfTwo(drill) && !lines.isEmpty();
      if (!once && !line.lanesOf(drill).isEmpty()) {
        lines.add(new DrillLine(drill, line));
      }
    }
    return lines;
  }

  private static boolean isGameOfTwo(Drill drill) {
    return drill.scored().map(game -> game.layout().players() == 2).orElse(false);
  }

  DrillForm.Scored game() {
    return drill.scored().orElseThrow();
  }

  Layout layout() {
    return drill.layout().orElseThrow();
  }

  boolean isScored() {
    return drill.scored().isPresent();
  }

  /** How many play one game: two on a lane, three or four on a whole court. */
  int players() {
    return layout().players();
  }

  /** How many groups can play at once. */
  int capacity(int courts) {
    return players() == 2 ? courts * line.lanesOf(drill).size() : courts;
  }

  /**
   * The place of a group. Pairs spread over the courts first, then share them; from stint to stint
   * the two lanes of a court change hands. Three or four have a court to themselves.
   */
  CourtLane place(int group, int stint, int courts) {
    List<Lane> lanes = line.lanesOf(drill);
    int lane = players() == 2 ? (group / courts + stint) % lanes.size() : 0;
    return new CourtLane(group % courts + 1, lanes.get(lane));
  }

  /** Whether the two roles differ and are taken in turn. */
  boolean swapsRoles() {
    return !layout().isEven() && drill.kind() != DrillKind.FULL_GAME;
  }

  String words() {
    return drill.name() + ", " + (players() > 2 ? "whole court" : line.words());
  }
}
