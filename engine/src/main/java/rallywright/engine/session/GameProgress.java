package rallywright.engine.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/**
 * Where one game stands after the events that count.
 *
 * @param game the planned game
 * @param format its format with head start and first server
 * @param status not begun, running, played out or time called
 * @param score the score as it stands, head start included
 * @param rallies the rallies in order; empty where only the final score is known
 * @param state the full state where the game was scored rally by rally; empty where only the final
 *     score is known
 * @param firstServer who served first, where it was said
 * @param lastEvent the newest event that counts, the one an undo takes back
 * @param rallyTimes when each rally ended, in milliseconds since 1970, as the phone saw it
 * @param rallyPhones which phone saw each rally; times of two phones must not be compared
 * @param startedAt when its first event was seen, in milliseconds since 1970
 */
public record GameProgress(
    PlannedGame game,
    GameFormat format,
    Status status,
    Score score,
    List<Rally> rallies,
    Optional<GameState> state,
    Optional<Side> firstServer,
    Optional<EventId> lastEvent,
    List<Long> rallyTimes,
    List<String> rallyPhones,
    OptionalLong startedAt) {

  /** Where a game stands. */
  public enum Status {
    /** No event yet. */
    NOT_BEGUN,
    /** Under way. */
    RUNNING,
    /** Played to the end. */
    PLAYED_OUT,
    /** Ended by the clock; the score stands. */
    TIME_CALLED
  }

  /** Copies the lists. */
  public GameProgress {
    rallies = List.copyOf(rallies);
    rallyTimes = List.copyOf(rallyTimes);
    rallyPhones = List.copyOf(rallyPhones);
  }

  /**
   * Whether the game is over, in either way.
   *
   * @return true when nothing more can be scored
   */
  public boolean isOver() {
    return status == Status.PLAYED_OUT || status == Status.TIME_CALLED;
  }

  /**
   * Whether rallies were played in it.
   *
   * @return true when the game tells something
   */
  public boolean tellsSomething() {
    return score.total() > format.start().total() || !rallies.isEmpty();
  }
}
