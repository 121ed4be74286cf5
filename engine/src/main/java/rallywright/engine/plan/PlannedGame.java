package rallywright.engine.plan;

import rallywright.engine.court.CourtLane;

/**
 * One game that is to be played.
 *
 * @param id the game's id, unique in the session
 * @param turn which turn of the block it belongs to, from 1; all games of a turn run side by side
 * @param place the court and lane
 * @param a the near side
 * @param b the far side
 * @param headStart the points given to either side before the first rally
 */
public record PlannedGame(
    GameId id, int turn, CourtLane place, Seat a, Seat b, HeadStart headStart) {

  /** Checks the turn. */
  public PlannedGame {
    if (turn < 1) {
      throw new IllegalArgumentException("The turn (" + turn + ") must be 1 or more.");
    }
  }

  /**
   * Whether the game takes a whole court: three or four players.
   *
   * @return false for one against one on a lane
   */
  public boolean takesWholeCourt() {
    return a.players().size() + b.players().size() > 2;
  }

  /**
   * The place in a coach's words.
   *
   * @return for example "court 2, left lane" or "court 2, whole court"
   */
  public String placeWords() {
    return takesWholeCourt() ? "court %d, whole court".formatted(place.court()) : place.words();
  }
}
