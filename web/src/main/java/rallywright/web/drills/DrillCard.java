package rallywright.web.drills;

import java.util.List;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;
import rallywright.paper.drawing.CourtDrawing;
import rallywright.paper.drawing.Detail;

/**
 * A drill among others.
 *
 * @param name its name
 * @param address the address of its page
 * @param rule its rule, or what counts, in one line
 * @param remark skills, length and roles in a few words
 * @param svg the small drawing, or an empty text where everybody moves freely
 */
public record DrillCard(String name, String address, String rule, String remark, String svg) {

  /**
   * Drills of one place in the session.
   *
   * @param title the place
   * @param cards its drills
   */
  public record Shelf(String title, List<DrillCard> cards) {}

  static DrillCard of(Drill drill) {
    return new DrillCard(
        drill.name(),
        "/drills/" + drill.key(),
        drill.rule(),
        DrillWords.remark(drill),
        CourtFigure.small(drill).orElse(""));
  }

  static DrillCard of(Yardstick yardstick) {
    return new DrillCard(
        yardstick.name(),
        "/drills/" + yardstick.key(),
        yardstick.hit(),
        "%s · %d balls".formatted(yardstick.skill().words(), yardstick.balls()),
        CourtDrawing.of(yardstick).svg(Detail.SMALL));
  }
}
