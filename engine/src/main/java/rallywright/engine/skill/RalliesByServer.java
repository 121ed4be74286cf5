package rallywright.engine.skill;

/**
 * The rallies of a game by who served them, as a rally log tells.
 *
 * @param aServed rallies that side A served
 * @param aServedAndWon those of them that A won
 * @param bServed rallies that side B served
 * @param bServedAndWon those of them that B won
 */
public record RalliesByServer(int aServed, int aServedAndWon, int bServed, int bServedAndWon)
    implements Result {
  /** Checks the ranges. */
  public RalliesByServer {
    if (!(aServedAndWon >= 0 && aServedAndWon <= aServed)
        || !(bServedAndWon >= 0 && bServedAndWon <= bServed)) {
      throw new IllegalArgumentException(
          "The rallies won on serve ("
              + aServedAndWon
              + ", "
              + bServedAndWon
              + ") must lie from 0 to the rallies served ("
              + aServed
              + ", "
              + bServed
              + ").");
    }
  }
}
