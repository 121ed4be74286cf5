package rallywright.engine.score;

/**
 * Why an event or a typed score cannot stand.
 *
 * @param reason which of the possible reasons
 * @param sentence what was seen, what is allowed, what to try
 */
public record ScoreRefusal(Reason reason, String sentence) {

  /** All reasons there are. */
  public enum Reason {
    /** A side has fewer points than it started with. */
    BELOW_THE_START,
    /** No side has reached its target, and time was not called. */
    NOBODY_AT_TARGET,
    /** The target is reached, but the lead is too small. */
    LEAD_TOO_SMALL,
    /** Both sides are where only the winner can be. */
    BOTH_AT_TARGET,
    /** The game ended earlier than this score. */
    PAST_THE_END,
    /** Time was called although the game was won. */
    WON_BEFORE_TIME,
    /** The game is over, nothing can follow. */
    GAME_OVER,
    /** There is nothing to take back. */
    NOTHING_TO_UNDO
  }
}
