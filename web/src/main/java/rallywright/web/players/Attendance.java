package rallywright.web.players;

import java.util.HashMap;
import java.util.Map;
import rallywright.engine.club.PlayerId;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;

/** How often everybody came: the sessions that were begun and in which they were present. */
final class Attendance {

  private final Map<PlayerId, Integer> counts = new HashMap<>();

  private Attendance() {}

  static Attendance of(ClubStore store) {
    Attendance all = new Attendance();
    for (Session session : store.sessions().all()) {
      if (session.state() != Session.State.PLANNED) {
        session.plan().present().stream()
            .distinct()
            .forEach(player -> all.counts.merge(player, 1, Integer::sum));
      }
    }
    return all;
  }

  int count(PlayerId player) {
    return counts.getOrDefault(player, 0);
  }
}
