package rallywright.paper.drawing;

import java.util.List;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotSetting.Place;
import rallywright.engine.aim.TargetCard;
import rallywright.engine.court.CourtPoint;
import rallywright.engine.court.Polygon;
import rallywright.engine.quantity.Length;
import rallywright.paper.sheet.Mark;

/** A shot on the court to scale: the ground that a page draws on, and the card's picture. */
public final class ShotDrawing {

  private static final double ACROSS = 13.2;
  private static final double FAR = 23.4;
  private static final double MM_PER_FOOT = 3.9;

  private ShotDrawing() {}

  /**
   * The ground and the lines of a court, in feet, for a picture whose other parts move.
   *
   * @return shapes without an svg element around them
   */
  public static String court() {
    CourtInk ink = new CourtInk();
    ink.lines();
    return ink.shapes();
  }

  /**
   * The card's picture: target hatched, cones with letters, the box of tape, the cross.
   *
   * @param card where they go
   * @param words what it shows, for readers who do not see it
   * @return one svg element
   */
  public static String of(TargetCard card, String words) {
    ShotSetting setting = card.answer().setting();
    CourtInk ink = new CourtInk();
    ink.hatched(polygon(card.cones()));
    ink.lines();
    CourtPoint hitter = point(setting.hitter().place());
    ink.box(polygon(TargetCard.corners(card.tape())));
    ink.play(hitter, point(card.cross()));
    ink.player(hitter, Mark.SOLID);
    ink.cross(point(card.cross()));
    for (int place = 0; place < card.cones().size(); place++) {
      ink.cone(point(card.cones().get(place)), String.valueOf((char) ('A' + place)));
    }
    double near = Math.max(FAR, -setting.hitter().place().along() / Length.METRES_PER_FOOT + 2.4);
    String described = CourtInk.escaped(words);
    return CourtInk.text(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" color=\"#000000\""
                + " viewBox=\"%s %s %s %s\" width=\"%smm\" height=\"%smm\"",
            -ACROSS,
            -FAR,
            2 * ACROSS,
            FAR + near,
            2 * ACROSS * MM_PER_FOOT,
            (FAR + near) * MM_PER_FOOT)
        + " aria-label=\"%1$s\" alt=\"%1$s\" title=\"%1$s\">".formatted(described)
        + ink.shapes()
        + "</svg>";
  }

  private static Polygon polygon(List<Place> places) {
    return new Polygon(places.stream().map(ShotDrawing::point).toList());
  }

  private static CourtPoint point(Place place) {
    return new CourtPoint(Length.metres(place.across()), Length.metres(place.along()));
  }
}
