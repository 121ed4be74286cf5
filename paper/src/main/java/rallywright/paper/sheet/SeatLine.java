package rallywright.paper.sheet;

/**
 * One side of a game with its score box.
 *
 * @param mark the form of the side's role
 * @param names first names, for example "Ana" or "Ana, Ben"
 * @param headStart points given, for example "+2", or empty
 */
public record SeatLine(Mark mark, String names, String headStart) {

  /** The longest name that is set in full size beside a score box, in characters. */
  private static final int FULL_SIZE = 9;

  /**
   * How large the names are set, so that they stay on the line.
   *
   * @return the name of a style
   */
  public String fit() {
    return names.length() <= FULL_SIZE ? "name" : "name long";
  }
}
