package rallywright.paper;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import rallywright.engine.court.CourtPoint;
import rallywright.engine.court.End;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.score.Side;
import rallywright.paper.sheet.CourtPicture;
import rallywright.paper.sheet.Mark;

/** The courts of the sheet: bounds hatched, players as blocks, the line of play dashed. */
final class DrawnCourts {

  private static final String HATCHED_IS_IN = "Hatched is in bounds.";

  private DrawnCourts() {}

  /** One drawing for straight lanes and one for diagonals, as far as they are used. */
  static List<CourtPicture> of(Drill drill, Collection<Lane> lanes) {
    List<CourtPicture> pictures = new ArrayList<>();
    if (drill.layout().isPresent()) {
      List<Lane> straight = lanes.stream().filter(lane -> !lane.direction().isCross()).toList();
      List<Lane> cross = lanes.stream().filter(lane -> lane.direction().isCross()).toList();
      for (List<Lane> sharing : List.of(straight, cross)) {
        if (!sharing.isEmpty()) {
          pictures.add(drawn(drill.layout().get(), sharing));
        }
      }
    }
    return pictures;
  }

  /** The place of the player and the target. */
  static List<CourtPicture> of(Yardstick yardstick) {
    Lane lane = Lane.STRAIGHT_RIGHT;
    CourtPoint player = yardstick.court().player().on(lane, End.NEAR);
    CourtPoint feeder = yardstick.court().feeder().on(lane, End.FAR);
    String words = "Court from above: the player near, the feeder far. Hatched is the target.";
    return List.of(
        new CourtPicture(
            new CourtSvg()
                .hatched(yardstick.court().target().on(lane, End.FAR))
                .lines()
                .direction(player, feeder)
                .player(player, Mark.SOLID)
                .player(feeder, Mark.OUTLINED)
                .describedAs(words),
            words));
  }

  private static CourtPicture drawn(Layout layout, List<Lane> lanes) {
    CourtSvg court = new CourtSvg();
    for (Lane lane : lanes) {
      for (Side side : Side.values()) {
        court.hatched(layout.inBounds(side, lane));
      }
    }
    court.lines();
    for (Lane lane : lanes) {
      List<CourtPoint> near = layout.positions(Side.A, lane);
      List<CourtPoint> far = layout.positions(Side.B, lane);
      court.direction(near.get(0), far.get(0));
      near.forEach(place -> court.player(place, Mark.SOLID));
      far.forEach(place -> court.player(place, Mark.OUTLINED));
    }
    String words =
        "Court from above, "
            + String.join(" and ", lanes.stream().map(Lane::words).toList())
            + ": near "
            + layout.sides().a().role().words()
            + ", far "
            + layout.sides().b().role().words()
            + ". "
            + HATCHED_IS_IN;
    return new CourtPicture(court.describedAs(words), words);
  }
}
