package rallywright.engine.score;

/**
 * Who serves the next rally.
 *
 * @param side the serving side
 * @param number first or second server of the turn; first where a side has one server
 * @param server which player of that side serves
 */
public record Serve(Side side, ServerNumber number, Partner server) {

  /**
   * The serve of a side that has one server a turn and one player who matters.
   *
   * @param side the serving side
   * @return that side's first server
   */
  public static Serve by(Side side) {
    return new Serve(side, ServerNumber.FIRST, Partner.RIGHT_AT_EVEN);
  }
}
