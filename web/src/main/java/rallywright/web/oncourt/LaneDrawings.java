package rallywright.web.oncourt;

import java.util.Optional;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;

/** Draws a drill to scale on one lane, always with the near side at the bottom. */
public interface LaneDrawings {

  /**
   * The drawing as one svg element.
   *
   * @param drill the drill
   * @param lane the lane on which it is played
   * @return empty for a drill that has no place on court
   */
  Optional<String> of(Drill drill, Lane lane);
}
