package rallywright.store;

import java.util.List;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.SessionId;
import rallywright.store.json.EventJson;

/** The rows of events. */
final class EventRows {

  private static final RowMapper<StoredEvent> EVENT =
      (row, number) -> new StoredEvent(row.getLong(1), EventJson.read(row.getString(2)));

  private EventRows() {}

  static List<StoredEvent> all(JdbcClient client) {
    return client.sql("select arrival, body from court_event order by arrival").query(EVENT).list();
  }

  static List<StoredEvent> after(JdbcClient client, SessionId session, long arrival) {
    return client
        .sql(
            """
            select arrival, body from court_event
            where session_id = :session and arrival > :arrival order by arrival
            """)
        .param("session", session.value())
        .param("arrival", arrival)
        .query(EVENT)
        .list();
  }

  static List<StoredEvent> withIds(JdbcClient client, List<String> ids) {
    return client
        .sql("select arrival, body from court_event where id in (:ids)")
        .param("ids", ids)
        .query(EVENT)
        .list();
  }

  static boolean anyOf(JdbcClient client, SessionId session) {
    return client
            .sql("select count(*) from court_event where session_id = :session")
            .param("session", session.value())
            .query(Integer.class)
            .single()
        > 0;
  }

  static void delete(JdbcClient client, EventId id) {
    client.sql("delete from court_event where id = :id").param("id", id.value()).update();
  }

  static void replace(JdbcClient client, CourtEvent event) {
    client
        .sql("update court_event set body = :body where id = :id")
        .param("body", EventJson.write(event))
        .param("id", event.stamp().id().value())
        .update();
  }
}
