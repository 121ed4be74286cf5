package rallywright.paper;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;
import rallywright.paper.drawing.CourtDrawing;
import rallywright.paper.drawing.Detail;
import rallywright.paper.sheet.CourtPicture;

/** The courts of the sheet. */
final class DrawnCourts {

  private DrawnCourts() {}

  /** One drawing for straight lanes and one for diagonals, as far as they are used. */
  static List<CourtPicture> of(Drill drill, Collection<Lane> lanes) {
    List<CourtPicture> pictures = new ArrayList<>();
    List<Lane> straight = lanes.stream().filter(lane -> !lane.direction().isCross()).toList();
    List<Lane> cross = lanes.stream().filter(lane -> lane.direction().isCross()).toList();
    CourtDrawing.of(drill, straight)
        .map(drawing -> onPaper(drawing, "straight"))
        .ifPresent(pictures::add);
    CourtDrawing.of(drill, cross)
        .map(drawing -> onPaper(drawing, "cross"))
        .ifPresent(pictures::add);
    return pictures;
  }

  /** The place of the player and the target. */
  static List<CourtPicture> of(Yardstick yardstick) {
    return List.of(onPaper(CourtDrawing.of(yardstick), ""));
  }

  private static CourtPicture onPaper(CourtDrawing drawing, String caption) {
    return new CourtPicture(drawing.svg(Detail.PAPER), caption, drawing.words());
  }
}
