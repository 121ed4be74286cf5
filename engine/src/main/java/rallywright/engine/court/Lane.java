package rallywright.engine.court;

import java.util.Arrays;
import java.util.List;

/**
 * Half of one court, in which two players drill, or the whole of it. Right and left are as the
 * reader sees the court with the near side at the bottom.
 */
public enum Lane {
  /** The right half: the near player's even side to the far player's odd side. */
  STRAIGHT_RIGHT("right lane", Direction.STRAIGHT),
  /** The left half: the near player's odd side to the far player's even side. */
  STRAIGHT_LEFT("left lane", Direction.STRAIGHT),
  /** The diagonal from even side to even side. */
  CROSS_EVEN("even diagonal", Direction.CROSS_EVEN),
  /** The diagonal from odd side to odd side. */
  CROSS_ODD("odd diagonal", Direction.CROSS_ODD);

  private final String words;
  private final Direction direction;

  Lane(String words, Direction direction) {
    this.words = words;
    this.direction = direction;
  }

  /**
   * The lane in a coach's words.
   *
   * @return for example "left lane"
   */
  public String words() {
    return words;
  }

  /**
   * The direction of play on this lane.
   *
   * @return the direction
   */
  public Direction direction() {
    return direction;
  }

  /**
   * Whether another lane can be used on the same court at the same time: straight with straight or
   * cross with cross, and never the same lane twice. A straight and a cross lane would share a
   * quarter of the court.
   *
   * @param other the other lane
   * @return whether both fit on one court
   */
  public boolean sharesCourtWith(Lane other) {
    boolean bothStraight = direction == Direction.STRAIGHT && other.direction == Direction.STRAIGHT;
    boolean bothCross = direction != Direction.STRAIGHT && other.direction != Direction.STRAIGHT;
    return this != other && (bothStraight || bothCross);
  }

  /**
   * The half in which a player of this lane stands.
   *
   * @param end the player's end
   * @return the player's own right (even) or left (odd) half
   */
  public CourtHalf half(End end) {
    return switch (this) {
      case CROSS_EVEN -> CourtHalf.EVEN;
      case CROSS_ODD -> CourtHalf.ODD;
      case STRAIGHT_RIGHT -> end == End.NEAR ? CourtHalf.EVEN : CourtHalf.ODD;
      case STRAIGHT_LEFT -> end == End.NEAR ? CourtHalf.ODD : CourtHalf.EVEN;
    };
  }

  /**
   * The lanes of a direction.
   *
   * @param direction straight or a diagonal
   * @return both straight lanes, the right one first, or the one diagonal
   */
  public static List<Lane> of(Direction direction) {
    return Arrays.stream(values()).filter(lane -> lane.direction == direction).toList();
  }
}
