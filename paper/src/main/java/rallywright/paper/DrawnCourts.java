package rallywright.paper;

import java.util.Collection;
import java.util.List;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;
import rallywright.paper.sheet.CourtPicture;

/** TEMP */
final class DrawnCourts implements CourtPictures {

  private static final CourtPicture P =
      new CourtPicture(
          "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"16mm\" height=\"35.2mm\" viewBox=\"0 0 20 44\" role=\"img\" alt=\"court\" title=\"court\"><rect x=\"0.2\" y=\"0.2\" width=\"19.6\" height=\"43.6\" fill=\"none\" stroke=\"#000000\" stroke-width=\"0.3\"/><path d=\"M0 15h20M0 29h20M10 0v15M10 29v15\" stroke=\"#000000\" stroke-width=\"0.3\"/><path d=\"M-1 22h22\" stroke=\"#000000\" stroke-width=\"0.6\"/></svg>",
          "court");

  @Override
  public List<CourtPicture> of(Drill drill, Collection<Lane> lanes) {
    return List.of(P);
  }

  @Override
  public List<CourtPicture> of(Yardstick yardstick) {
    return List.of(P);
  }
}
