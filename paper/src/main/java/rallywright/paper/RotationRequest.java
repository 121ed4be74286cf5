package rallywright.paper;

import java.util.Map;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationSchedule;

/**
 * What a rotation sheet is made of.
 *
 * @param title what is played
 * @param when the day in words, or empty
 * @param game how players are put together
 * @param schedule the rounds
 * @param names how each player is called; others may see them
 * @param origin whether the people are the club's own
 */
public record RotationRequest(
    String title,
    String when,
    RotationGame game,
    RotationSchedule schedule,
    Map<PlayerId, String> names,
    Origin origin) {

  /** Copies the names. */
  public RotationRequest {
    names = Map.copyOf(names);
  }
}
