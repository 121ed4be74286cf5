package rallywright.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.SessionId;
import rallywright.store.json.EventJson;

/** What happened on court, in the order in which it reached the store; only ever added to. */
public final class EventLog {

  private static final int IDS_AT_ONCE = 500;

  private final Database database;

  EventLog(Database database) {
    this.database = database;
  }

  /**
   * What became of events that were sent.
   *
   * @param added how many were new
   * @param differing the ids that were there already with other content; the first content stays
   */
  public record Appended(int added, List<EventId> differing) {

    /** Copies the list. */
    public Appended {
      differing = List.copyOf(differing);
    }
  }

  /**
   * Adds the events that are new; one whose id is there already is left as it was first stored.
   * When this returns they are on the disk. Events that name a merged walk-in are kept under the
   * player's id; events that belong to what was erased are taken and not kept.
   *
   * @param events the events in the order in which they happened
   * @return how many were new, and which repeated ids came with other content
   * @throws StoreProblem if a session is not in the club; nothing is then added
   */
  public Appended append(List<CourtEvent> events) {
    if (events.isEmpty()) {
      return new Appended(0, List.of());
    }
    return database.change(client -> append(client, events));
  }

  /**
   * The events of a session.
   *
   * @param session the session's id
   * @return its events in order of arrival
   */
  public List<CourtEvent> of(SessionId session) {
    return after(session, 0).stream().map(StoredEvent::event).toList();
  }

  /**
   * The events of a session that arrived after a given one, for pages that follow live.
   *
   * @param session the session's id
   * @param arrival the place of the last event already seen, 0 for none
   * @return the later events in order of arrival
   */
  public List<StoredEvent> after(SessionId session, long arrival) {
    return database.read(client -> EventRows.after(client, session, arrival));
  }

  /**
   * The events of all sessions.
   *
   * @return the events in order of arrival
   */
  public List<StoredEvent> all() {
    return database.read(EventRows::all);
  }

  private Appended append(JdbcClient client, List<CourtEvent> events) {
    refuseUnknownSessions(client, events);
    Forgotten forgotten = Forgotten.of(client);
    Map<EventId, CourtEvent> known = stored(client, events);
    List<CourtEvent> fresh = new ArrayList<>();
    List<EventId> differing = new ArrayList<>();
    for (CourtEvent sent : events) {
      CourtEvent event = EventSubjects.withPlayer(sent, forgotten::now);
      CourtEvent first = known.putIfAbsent(event.stamp().id(), event);
      if (first == null && isKept(event, forgotten)) {
        fresh.add(event);
      } else if (first != null && !first.equals(event)) {
        differing.add(event.stamp().id());
      }
    }
    add(client, fresh);
    return new Appended(fresh.size(), differing);
  }

  private void add(JdbcClient client, List<CourtEvent> fresh) {
    if (fresh.isEmpty()) {
      return;
    }
    long last =
        client
            .sql("update club set last_arrival = last_arrival + :n returning last_arrival")
            .param("n", fresh.size())
            .query(Long.class)
            .single();
    List<Object[]> rows = new ArrayList<>();
    for (CourtEvent event : fresh) {
      long arrival = last - fresh.size() + rows.size() + 1;
      CourtEvent.Stamp stamp = event.stamp();
      rows.add(
          new Object[] {
            arrival, stamp.id().value(), stamp.session().value(), EventJson.write(event)
          });
    }
    database.addAll(
        "insert into court_event (arrival, id, session_id, body) values (?, ?, ?, ?)", rows);
  }

  private static boolean isKept(CourtEvent event, Forgotten forgotten) {
    boolean ofForgottenGame =
        EventSubjects.game(event)
            .filter(game -> forgotten.has(event.stamp().session(), game))
            .isPresent();
    boolean ofForgottenPlayer =
        EventSubjects.player(event)
            .filter(
                player ->
                    forgotten.has(player)
                        || (EventSubjects.isPersonal(event) && forgotten.isNameless(player)))
            .isPresent();
    return !forgotten.has(event.stamp().id()) && !ofForgottenGame && !ofForgottenPlayer;
  }

  private static Map<EventId, CourtEvent> stored(JdbcClient client, List<CourtEvent> events) {
    List<String> ids = events.stream().map(event -> event.stamp().id().value()).distinct().toList();
    Map<EventId, CourtEvent> known = new LinkedHashMap<>();
    for (int from = 0; from < ids.size(); from += IDS_AT_ONCE) {
      List<String> some = ids.subList(from, Math.min(ids.size(), from + IDS_AT_ONCE));
      EventRows.withIds(client, some)
          .forEach(stored -> known.put(stored.event().stamp().id(), stored.event()));
    }
    return known;
  }

  private static void refuseUnknownSessions(JdbcClient client, List<CourtEvent> events) {
    TreeSet<String> unknown = new TreeSet<>();
    events.forEach(event -> unknown.add(event.stamp().session().value()));
    List<String> found =
        client
            .sql("select id from training_session where id in (:ids)")
            .param("ids", List.copyOf(unknown))
            .query(String.class)
            .list();
    found.forEach(unknown::remove);
    if (!unknown.isEmpty()) {
      throw new StoreProblem(
          "The session "
              + String.join(", ", unknown)
              + " is not in this club, so nothing was added. Maybe it was removed, or the phone"
              + " belongs to another club.");
    }
  }
}
