package rallywright.paper;

import java.util.List;
import rallywright.engine.club.Player;
import rallywright.engine.session.Session;

/**
 * What a court sheet is made of.
 *
 * @param session the session with its plan
 * @param players who is named in the plan; only first names are printed
 * @param drills where drills and yardsticks are looked up
 * @param access how a phone reaches the session
 * @param origin whether the people are the club's own
 */
public record SheetRequest(
    Session session, List<Player> players, DrillBook drills, PhoneAccess access, Origin origin) {

  /** Copies the list. */
  public SheetRequest {
    players = List.copyOf(players);
  }
}
