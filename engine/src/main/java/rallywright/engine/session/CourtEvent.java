package rallywright.engine.session;

import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.GameId;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/**
 * One thing that happened on court. Events carry an id made by the phone; the same event sent twice
 * counts once.
 */
public sealed interface CourtEvent {

  /**
   * What every event carries.
   *
   * @param id the event's id, made by the phone
   * @param session the session it belongs to
   * @param atMillis when the phone saw it, in milliseconds since 1970 (UTC)
   * @param by the phone that made it, any text of 1 to 64 characters, or empty for the coach's desk
   * @param order where the phone puts it among the events of the session
   */
  record Stamp(EventId id, SessionId session, long atMillis, String by, PhoneOrder order) {

    /**
     * The stamp of an event whose place is only where it arrived.
     *
     * @param id the event's id
     * @param session the session it belongs to
     * @param atMillis when it was seen, in milliseconds since 1970 (UTC)
     * @param by the phone that made it, or empty for the coach's desk
     */
    public Stamp(EventId id, SessionId session, long atMillis, String by) {
      this(id, session, atMillis, by, PhoneOrder.UNKNOWN);
    }
  }

  /**
   * The id, session and time.
   *
   * @return the stamp
   */
  Stamp stamp();

  /** A rally was won. */
  record RallyPlayed(Stamp stamp, GameId game, Rally rally) implements CourtEvent {}

  /** The first server of a game was named. */
  record FirstServerNamed(Stamp stamp, GameId game, Side server) implements CourtEvent {}

  /** The final score of a game was given in one go; replaces what was scored before. */
  record FinalScoreGiven(Stamp stamp, GameId game, Score score, Finish finish)
      implements CourtEvent {}

  /** Time was called in a game that was scored rally by rally; its score stands. */
  record TimeCalled(Stamp stamp, GameId game) implements CourtEvent {}

  /** An earlier event does not count any more. */
  record Undone(Stamp stamp, EventId undone) implements CourtEvent {}

  /** A block began. */
  record BlockStarted(Stamp stamp, BlockId block) implements CourtEvent {}

  /** A block ended. */
  record BlockEnded(Stamp stamp, BlockId block) implements CourtEvent {}

  /** A closed test was counted: how many of the balls succeeded. */
  record YardstickCounted(Stamp stamp, BlockId block, PlayerId player, int hits, int balls)
      implements CourtEvent {
    /** Checks the counts. */
    public YardstickCounted {
      if (balls < 1 || balls > 1000 || hits < 0 || hits > balls) {
        throw new IllegalArgumentException(
            "The count (" + hits + " of " + balls + ") must be 0 or more of 1 to 1000 balls.");
      }
    }
  }

  /** The weather was noted. */
  record ConditionsNoted(Stamp stamp, Conditions conditions) implements CourtEvent {}

  /** A player rated the effort of the session from 0 (rest) to 10 (as hard as it gets). */
  record EffortRated(Stamp stamp, PlayerId player, int rating) implements CourtEvent {
    /** Checks the rating. */
    public EffortRated {
      if (rating < 0 || rating > 10) {
        throw new IllegalArgumentException("The effort (" + rating + ") must be from 0 to 10.");
      }
    }
  }

  /** The session was closed. */
  record SessionEnded(Stamp stamp) implements CourtEvent {}

  /** How a game came to its end. */
  enum Finish {
    /** Played to the end. */
    PLAYED_OUT,
    /** Time was called. */
    TIME_CALLED
  }
}
