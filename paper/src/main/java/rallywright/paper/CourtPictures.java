package rallywright.paper;

import java.util.Collection;
import java.util.List;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;
import rallywright.paper.sheet.CourtPicture;

/** Draws what a block needs on the sheet. */
interface CourtPictures {

  /** One drawing for each set of lanes that can share a court. */
  List<CourtPicture> of(Drill drill, Collection<Lane> lanes);

  /** One drawing of the place and the target. */
  List<CourtPicture> of(Yardstick yardstick);
}
