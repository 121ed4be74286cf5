package rallywright.store;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Venue;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.rotation.SavedDay;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.Session;

/**
 * Everything that a club holds, as values; keys and secret settings stay out of it.
 *
 * @param players all players
 * @param groups all groups
 * @param venues all venues
 * @param sessions all sessions
 * @param templates plans kept as templates, by name
 * @param events what happened on court, in order of arrival
 * @param settings settings that are no secret, by name
 * @param drills the coach's own drills, by key
 * @param forgotten marks of what was taken away for good
 * @param merged walk-ins that were merged, by their old id
 * @param days days of games with rotating partners
 */
public record ClubContents(
    List<Player> players,
    List<Group> groups,
    List<Venue> venues,
    List<Session> sessions,
    Map<String, SessionPlan> templates,
    List<CourtEvent> events,
    Map<String, String> settings,
    Map<DrillKey, String> drills,
    List<Mark> forgotten,
    Map<PlayerId, PlayerId> merged,
    List<SavedDay> days) {

  /**
   * A mark that something must not come back. It holds no personal data.
   *
   * @param kind {@code event}, {@code game} or {@code player}
   * @param id the id of what was taken away
   */
  public record Mark(String kind, String id) {

    /** Checks the kind. */
    public Mark {
      if (!Forgotten.KINDS.contains(kind)) {
        throw new IllegalArgumentException(
            "The kind of mark \"" + kind + "\" must be one of " + Forgotten.KINDS + ".");
      }
    }
  }

  /**
   * Everybody whom a plan names: present, seated in a game or sitting out.
   *
   * @param plan the plan
   * @return their ids
   */
  public static Set<PlayerId> namedIn(SessionPlan plan) {
    return PlanPlayers.named(plan);
  }

  /** Copies the lists; the order of maps stays. */
  public ClubContents {
    players = List.copyOf(players);
    groups = List.copyOf(groups);
    venues = List.copyOf(venues);
    sessions = List.copyOf(sessions);
    events = List.copyOf(events);
    forgotten = List.copyOf(forgotten);
    days = List.copyOf(days);
  }
}
