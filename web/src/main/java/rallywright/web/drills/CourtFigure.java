package rallywright.web.drills;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;
import rallywright.paper.drawing.CourtDrawing;
import rallywright.paper.drawing.Detail;

/**
 * A court drawing with its caption.
 *
 * @param caption the direction in a few words
 * @param svg the drawing, made by this program and therefore written unescaped
 */
public record CourtFigure(String caption, String svg) {

  /** One large drawing for each direction of a drill. */
  static List<CourtFigure> of(Drill drill) {
    return drill.directions().stream()
        .flatMap(
            direction ->
                CourtDrawing.of(drill, direction).stream()
                    .map(
                        court ->
                            new CourtFigure(
                                capital(direction.words()), court.svg(Detail.LABELLED))))
        .toList();
  }

  /** The drawing of a yardstick. */
  static List<CourtFigure> of(Yardstick yardstick) {
    return List.of(
        new CourtFigure(
            capital(yardstick.court().direction().words()),
            CourtDrawing.of(yardstick).svg(Detail.LABELLED)));
  }

  /** The small drawing of a drill in its first direction; empty where everybody moves freely. */
  static Optional<String> small(Drill drill) {
    return drill.directions().stream()
        .findFirst()
        .flatMap(direction -> CourtDrawing.of(drill, direction))
        .map(court -> court.svg(Detail.SMALL));
  }

  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
