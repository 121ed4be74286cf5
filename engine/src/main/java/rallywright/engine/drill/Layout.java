package rallywright.engine.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import rallywright.engine.court.CourtPoint;
import rallywright.engine.court.Direction;
import rallywright.engine.court.End;
import rallywright.engine.court.Lane;
import rallywright.engine.court.Polygon;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Side;

/**
 * How a drill lies on the court: side A at the near end, side B at the far end.
 *
 * @param directions the directions in which the drill is played, one or more, in the order of
 *     {@link Direction}
 * @param sides what each side does
 */
public record Layout(List<Direction> directions, BySide<DrillSide> sides) {

  /** Orders the directions and checks that both sides are alike exactly in an even drill. */
  public Layout {
    directions = List.copyOf(new TreeSet<>(directions));
    if (directions.isEmpty()) {
      throw new IllegalArgumentException(
          "A drill on a lane needs a direction: straight, cross-even or cross-odd."
              + " Maybe all three.");
    }
    Role a = sides.a().role();
    Role b = sides.b().role();
    boolean bothEven = a == Role.EVEN && b == Role.EVEN;
    boolean twoRoles = a != b && a != Role.EVEN && b != Role.EVEN;
    if (!bothEven && !twoRoles) {
      throw new IllegalArgumentException(
          "The roles (%s and %s) must differ, or both be even. Maybe even was meant."
              .formatted(a.words(), b.words()));
    }
    if (bothEven && !sides.a().equals(sides.b())) {
      throw new IllegalArgumentException(
          "Both sides of an even drill must be the same, but they differ in place, task, bounds,"
              + " strokes or weights. Maybe give the side once, or name two roles.");
    }
  }

  /**
   * Whether both sides do the same.
   *
   * @return true for an even drill
   */
  public boolean isEven() {
    return sides.a().role() == Role.EVEN;
  }

  /**
   * How many play on one lane.
   *
   * @return 2 to 4
   */
  public int players() {
    return sides.a().stands().size() + sides.b().stands().size();
  }

  /**
   * The end at which a side starts: A near, B far.
   *
   * @param side the side
   * @return its end
   */
  public static End endOf(Side side) {
    return side == Side.A ? End.NEAR : End.FAR;
  }

  /**
   * Where the players of a side start.
   *
   * @param side the side
   * @param lane the lane
   * @return one point for each player
   */
  public List<CourtPoint> positions(Side side, Lane lane) {
    List<CourtPoint> points = new ArrayList<>();
    for (Stand stand : sides.of(side).stands()) {
      points.add(stand.in(lane.direction()).on(lane, endOf(side)));
    }
    return points;
  }

  /**
   * Where a ball that comes to a side may land.
   *
   * @param side the side that receives the ball
   * @param lane the lane
   * @return the area, inside the lines of the lane
   */
  public Polygon inBounds(Side side, Lane lane) {
    return sides.of(side).inBounds().in(lane.direction()).on(lane, endOf(side));
  }
}
