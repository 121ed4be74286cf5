package rallywright.engine.drill;

import rallywright.engine.court.Direction;
import rallywright.engine.court.HalfArea;

/**
 * Where a ball that comes to a side may land.
 *
 * @param straight the area on a straight lane
 * @param cross the area on a diagonal
 */
public record InBounds(HalfArea straight, HalfArea cross) {

  /**
   * The same area in every direction.
   *
   * @param area the area
   * @return the bounds
   */
  public static InBounds everywhere(HalfArea area) {
    return new InBounds(area, area);
  }

  /**
   * The area in a direction.
   *
   * @param direction straight or a diagonal
   * @return the area
   */
  public HalfArea in(Direction direction) {
    return direction.isCross() ? cross : straight;
  }
}
