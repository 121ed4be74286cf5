package rallywright.engine.session;

import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.VenueId;
import rallywright.engine.plan.SessionPlan;

/**
 * A session in the club's diary.
 *
 * @param id the session's id
 * @param name what the coach calls it; 1 to 80 characters
 * @param date the day
 * @param start the time at which it starts
 * @param venue where, or null where it was not said
 * @param group the group it is for, or null for a mixed one
 * @param plan what is to be played
 * @param state where it stands
 */
public record Session(
    SessionId id,
    String name,
    LocalDate date,
    LocalTime start,
    @Nullable VenueId venue,
    @Nullable GroupId group,
    SessionPlan plan,
    State state) {

  /** Where a session stands. */
  public enum State {
    /** Planned, nothing played. */
    PLANNED,
    /** On court now. */
    RUNNING,
    /** Played. */
    DONE
  }

  /** Checks the name. */
  public Session {
    if (name.isBlank() || name.length() > 80) {
      throw new IllegalArgumentException(
          "The session's name \"" + name + "\" must have 1 to 80 characters.");
    }
  }

  /**
   * This session with another plan.
   *
   * @param other the new plan
   * @return the changed session
   */
  public Session withPlan(SessionPlan other) {
    return new Session(id, name, date, start, venue, group, other, state);
  }

  /**
   * This session in another state.
   *
   * @param other the new state
   * @return the changed session
   */
  public Session withState(State other) {
    return new Session(id, name, date, start, venue, group, plan, other);
  }
}
