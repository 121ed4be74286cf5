package rallywright.engine.score;

/**
 * The half of one's own side in which one stands, facing the net. The court diagonal to a player's
 * even court is the opponent's even court.
 */
public enum ServiceCourt {
  /** The right-hand half: from here the first serve of a game is struck at 0. */
  EVEN("right"),
  /** The left-hand half. */
  ODD("left");

  private final String hand;

  ServiceCourt(String hand) {
    this.hand = hand;
  }

  /**
   * The court that belongs to a number of points.
   *
   * @param points a side's points
   * @return even for an even number, odd for an odd one
   */
  public static ServiceCourt of(int points) {
    return points % 2 == 0 ? EVEN : ODD;
  }

  /**
   * The half next to this one.
   *
   * @return the other court of the same side
   */
  public ServiceCourt other() {
    return this == EVEN ? ODD : EVEN;
  }

  /**
   * The word a player uses.
   *
   * @return "right" or "left"
   */
  public String hand() {
    return hand;
  }
}
