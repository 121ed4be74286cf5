package rallywright.paper.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import rallywright.engine.court.CourtHalf;
import rallywright.engine.court.CourtPoint;
import rallywright.engine.court.Direction;
import rallywright.engine.court.End;
import rallywright.engine.court.Lane;
import rallywright.engine.court.Polygon;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.quantity.Length;
import rallywright.engine.score.Side;
import rallywright.paper.sheet.Mark;

/**
 * A drill or yardstick on a court to scale: bounds hatched, side A as a solid block at the near
 * end, side B as an outlined block at the far end, the line of play dashed.
 */
public final class CourtDrawing {

  /** White around the lines in feet: room for a player and a word behind the baseline. */
  private static final double EDGE_ALONG = 4.5;

  /** White beside the lines in feet: the posts stand 1 ft outside them. */
  private static final double EDGE_ACROSS = 1.5;

  /** From the middle of a block to the word beyond it. */
  private static final double WORD_BEYOND = 2.9;

  /** Where net and kitchen are named, in feet: in the half of the near kitchen without a player. */
  private static final double WORDS_OUT = 5.8;

  private static final double NET_WORD_DOWN = 2.8;
  private static final double KITCHEN_WORD_DOWN = 5.5;

  private final List<Polygon> areas = new ArrayList<>();
  private final List<Play> plays = new ArrayList<>();
  private final List<CourtHalf> nearHalves = new ArrayList<>();
  private final String title;
  private final String words;

  private record Figure(List<CourtPoint> places, Mark mark, String word) {}

  private record Play(Figure near, Optional<Figure> far, CourtPoint toward) {}

  private CourtDrawing(String title, String words) {
    this.title = title;
    this.words = words;
  }

  /** A drill on one lane; empty where everybody moves freely. */
  public static Optional<CourtDrawing> of(Drill drill, Lane lane) {
    return of(drill, List.of(lane));
  }

  /** A drill in one direction, on the right lane if it is straight. */
  public static Optional<CourtDrawing> of(Drill drill, Direction direction) {
    return of(drill, Lane.of(direction).get(0));
  }

  /** A drill on the lanes of one court; empty where everybody moves freely or without lanes. */
  public static Optional<CourtDrawing> of(Drill drill, Collection<Lane> lanes) {
    return lanes.isEmpty()
        ? Optional.empty()
        : drill.layout().map(layout -> drawn(layout, drill.name(), List.copyOf(lanes)));
  }

  /** The place and the target of a yardstick. */
  public static CourtDrawing of(Yardstick yardstick) {
    Lane lane = Lane.of(yardstick.court().direction()).get(0);
    Polygon target = yardstick.court().target().on(lane, End.FAR);
    CourtPoint player = yardstick.court().player().on(lane, End.NEAR);
    Optional<CourtPoint> feeder = yardstick.court().feeder().map(spot -> spot.on(lane, End.FAR));
    String feederWords = feeder.isPresent() ? ", the feeder far (outlined block)" : "";
    CourtDrawing drawing =
        new CourtDrawing(
            yardstick.name() + ", " + lane.direction().words(),
            "Court from above: the player near (solid block)"
                + feederWords
                + ". Hatched is the target.");
    drawing.areas.add(target);
    drawing.nearHalves.add(lane.half(End.NEAR));
    drawing.plays.add(
        new Play(
            new Figure(List.of(player), Mark.SOLID, "player"),
            feeder.map(place -> new Figure(List.of(place), Mark.OUTLINED, "feeder")),
            feeder.orElse(middle(target))));
    return drawing;
  }

  private static CourtDrawing drawn(Layout layout, String name, List<Lane> lanes) {
    String where = String.join(" and ", lanes.stream().map(Lane::words).toList());
    CourtDrawing drawing =
        new CourtDrawing(
            name + ", " + where,
            "Court from above, %s: near %s (solid block), far %s (outlined block). %s"
                .formatted(
                    where,
                    place(layout.sides().a(), lanes.get(0)),
                    place(layout.sides().b(), lanes.get(0)),
                    "Hatched is in bounds."));
    for (Lane lane : lanes) {
      for (Side side : Side.values()) {
        drawing.areas.add(layout.inBounds(side, lane));
      }
      drawing.nearHalves.add(lane.half(End.NEAR));
      Figure near = figure(layout, Side.A, lane);
      Figure far = figure(layout, Side.B, lane);
      drawing.plays.add(new Play(near, Optional.of(far), far.places().get(0)));
    }
    return drawing;
  }

  private static Figure figure(Layout layout, Side side, Lane lane) {
    Role role = layout.sides().of(side).role();
    return new Figure(
        layout.positions(side, lane),
        side == Side.A ? Mark.SOLID : Mark.OUTLINED,
        role == Role.EVEN ? "" : role.words());
  }

  private static String place(DrillSide side, Lane lane) {
    Length fromNet = side.stands().get(0).in(lane.direction()).fromNet();
    String role = side.role() == Role.EVEN ? "one player" : side.role().words();
    return "%s, %s from the net".formatted(role, fromNet.inFeet());
  }

  private static CourtPoint middle(Polygon area) {
    CourtPoint first = area.corners().get(0);
    CourtPoint opposite = area.corners().get(area.corners().size() / 2);
    return new CourtPoint(
        first.across().plus(opposite.across()).times(0.5),
        first.along().plus(opposite.along()).times(0.5));
  }

  /** The drawing in a few words, for example a caption. */
  public String title() {
    return title;
  }

  /** What it shows, for readers who do not see it. */
  public String words() {
    return words;
  }

  /** The drawing as one svg element. */
  public String svg(Detail detail) {
    CourtInk ink = new CourtInk();
    areas.forEach(ink::hatched);
    ink.lines();
    for (Play play : plays) {
      ink.play(play.near().places().get(0), play.toward());
      figure(ink, play.near(), detail);
      play.far().ifPresent(far -> figure(ink, far, detail));
    }
    if (detail == Detail.LABELLED && nearHalves.size() == 1) {
      double free = nearHalves.get(0) == CourtHalf.EVEN ? -WORDS_OUT : WORDS_OUT;
      ink.word(free, NET_WORD_DOWN, "net");
      ink.word(free, KITCHEN_WORD_DOWN, "kitchen");
    }
    return opening(detail) + ink.shapes() + "</svg>";
  }

  private static void figure(CourtInk ink, Figure figure, Detail detail) {
    for (CourtPoint place : figure.places()) {
      ink.player(place, figure.mark());
      if (detail == Detail.LABELLED && !figure.word().isEmpty()) {
        double[] at = CourtInk.onPaper(place);
        double beyond = at[1] > 0 ? WORD_BEYOND + 0.6 : -WORD_BEYOND + 0.9;
        ink.word(at[0], at[1] + beyond, figure.word());
      }
    }
  }

  private String opening(Detail detail) {
    double left = -CourtInk.HALF_WIDTH - EDGE_ACROSS;
    double along = detail == Detail.LABELLED ? EDGE_ALONG : EDGE_ALONG - 1.7;
    double top = -CourtInk.HALF_LENGTH - along;
    String box =
        CourtInk.text(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"court-drawing\" role=\"img\""
                + " color=\"#000000\" viewBox=\"%s %s %s %s\"",
            left, top, -2 * left, -2 * top);
    String described = CourtInk.escaped(words);
    return detail == Detail.PAPER
        ? box
            + " width=\"46\" height=\"98\" aria-label=\"%1$s\" alt=\"%1$s\" title=\"%1$s\">"
                .formatted(described)
        : box + "><title>%s</title><desc>%s</desc>".formatted(CourtInk.escaped(title), described);
  }
}
