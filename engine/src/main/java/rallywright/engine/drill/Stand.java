package rallywright.engine.drill;

import rallywright.engine.court.Direction;
import rallywright.engine.court.Spot;

/**
 * Where a player starts.
 *
 * @param straight the spot on a straight lane
 * @param cross the spot on a diagonal
 */
public record Stand(Spot straight, Spot cross) {

  /**
   * The same spot in every direction.
   *
   * @param spot the spot
   * @return the stand
   */
  public static Stand everywhere(Spot spot) {
    return new Stand(spot, spot);
  }

  /**
   * The spot in a direction.
   *
   * @param direction straight or a diagonal
   * @return the spot
   */
  public Spot in(Direction direction) {
    return direction.isCross() ? cross : straight;
  }
}
