package rallywright.engine.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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

  /**
   * A note in words: on a player, on the drill of a block, or on the session where neither is
   * named. A correction is the undoing of the old note and a new one that names it.
   *
   * @param stamp the stamp
   * @param player whom it is about, if it is about one player
   * @param block the block whose drill it is about, if it is about a drill
   * @param text 1 to {@value #LONGEST_TEXT} characters; the only control character is the line feed
   * @param instead the note in whose place it stands
   */
  record NoteWritten(
      Stamp stamp,
      Optional<PlayerId> player,
      Optional<BlockId> block,
      String text,
      Optional<EventId> instead)
      implements CourtEvent {

    /** The longest note, in UTF-16 units: a few sentences. Assumption of this project. */
    public static final int LONGEST_TEXT = 500;

    /** Checks the text and that it is about one thing. */
    public NoteWritten {
      if (player.isPresent() && block.isPresent()) {
        throw new IllegalArgumentException(
            "A note is about a player or about a drill, not both. Maybe write two.");
      }
      NoteText.check(text);
    }
  }

  /**
   * The block that is on ends sooner or later than planned: so many minutes from now, or without
   * some of its games. A later one replaces an earlier one; a new start of the block ends it.
   *
   * @param stamp the stamp; the minutes count from its time
   * @param block the block
   * @param minutesLeft how long it goes on, 0 to {@value #LONGEST_MINUTES}; empty where no time was
   *     set
   * @param without the games that are not played any more; one that is scored all the same counts
   */
  record BlockLimited(Stamp stamp, BlockId block, OptionalInt minutesLeft, List<GameId> without)
      implements CourtEvent {

    /** The longest time that can be set, in minutes. Assumption of this project. */
    public static final int LONGEST_MINUTES = 120;

    /** The most games that can be named: more than any block has. */
    public static final int MOST_GAMES = 500;

    /** Checks the ranges and copies the list. */
    public BlockLimited {
      int minutes = minutesLeft.orElse(0);
      if (minutes < 0 || minutes > LONGEST_MINUTES) {
        throw new IllegalArgumentException(
            "The minutes that are left (%d) must be from 0 to %d. Maybe 5."
                .formatted(minutes, LONGEST_MINUTES));
      }
      if (without.size() > MOST_GAMES || (minutesLeft.isEmpty() && without.isEmpty())) {
        throw new IllegalArgumentException(
            "A block that ends sooner needs the minutes that are left or 1 to %d games that fall"
                    .formatted(MOST_GAMES)
                + " away, not %d.".formatted(without.size()));
      }
      without = List.copyOf(without);
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
