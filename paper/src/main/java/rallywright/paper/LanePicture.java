package rallywright.paper;

import java.util.List;
import java.util.Optional;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;
import rallywright.paper.sheet.CourtPicture;

/** The drawings of the court sheet, one lane at a time, for the phone. */
public final class LanePicture {

  private LanePicture() {}

  /** A drill on one lane as an svg element; empty where everybody moves freely. */
  public static Optional<String> of(Drill drill, Lane lane) {
    return DrawnCourts.of(drill, List.of(lane)).stream().findFirst().map(CourtPicture::svg);
  }

  /** A yardstick as an svg element. */
  public static Optional<String> of(Yardstick yardstick) {
    return DrawnCourts.of(yardstick).stream().findFirst().map(CourtPicture::svg);
  }
}
