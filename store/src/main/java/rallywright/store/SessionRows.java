package rallywright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.VenueId;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.json.PlanJson;

/** The rows of sessions and templates. */
final class SessionRows {

  private static final String COLUMNS =
      "select id, name, played_on, starts_at, venue_id, group_id, plan, state"
          + " from training_session";

  private SessionRows() {}

  static List<Session> all(JdbcClient client) {
    return client
        .sql(COLUMNS + " order by played_on desc, starts_at desc, id desc")
        .query((row, number) -> session(row))
        .list();
  }

  /** Without reading a plan: days and times of the clock are texts in their own order. */
  static Optional<SessionId> lastBegunBefore(JdbcClient client, Session other) {
    return client
        .sql(
            """
            select id from training_session
            where state <> :planned and id <> :id
              and (played_on < :day or (played_on = :day and starts_at <= :time))
            order by played_on desc, starts_at desc, id desc
            limit 1
            """)
        .param("planned", Session.State.PLANNED.name())
        .param("id", other.id().value())
        .param("day", other.date().toString())
        .param("time", other.start().toString())
        .query(String.class)
        .optional()
        .map(SessionId::new);
  }

  static Optional<Session> find(JdbcClient client, SessionId id) {
    return client
        .sql(COLUMNS + " where id = :id")
        .param("id", id.value())
        .query((row, number) -> session(row))
        .optional();
  }

  static void put(JdbcClient client, Session session) {
    VenueId venue = session.venue();
    GroupId group = session.group();
    client
        .sql(
            """
            insert into training_session
              (id, name, played_on, starts_at, venue_id, group_id, state, plan)
            values (:id, :name, :day, :time, :venue, :group, :state, :plan)
            on conflict (id) do update set name = excluded.name,
              played_on = excluded.played_on, starts_at = excluded.starts_at,
              venue_id = excluded.venue_id, group_id = excluded.group_id,
              state = excluded.state, plan = excluded.plan
            """)
        .param("id", session.id().value())
        .param("name", session.name())
        .param("day", session.date().toString())
        .param("time", session.start().toString())
        .param("venue", venue == null ? null : venue.value(), java.sql.Types.VARCHAR)
        .param("group", group == null ? null : group.value(), java.sql.Types.VARCHAR)
        .param("state", session.state().name())
        .param("plan", PlanJson.write(session.plan()))
        .update();
  }

  static Map<String, SessionPlan> templates(JdbcClient client) {
    Map<String, SessionPlan> templates = new LinkedHashMap<>();
    client
        .sql("select name, plan from plan_template order by lower(name), name")
        .query(
            (RowCallbackHandler)
                row -> templates.put(row.getString(1), PlanJson.read(row.getString(2))));
    return templates;
  }

  static void put(JdbcClient client, String name, SessionPlan plan) {
    client
        .sql(
            """
            insert into plan_template (name, plan) values (:name, :plan)
            on conflict (name) do update set plan = excluded.plan
            """)
        .param("name", name)
        .param("plan", PlanJson.write(plan))
        .update();
  }

  private static Session session(ResultSet row) throws SQLException {
    return new Session(
        new SessionId(row.getString("id")),
        row.getString("name"),
        LocalDate.parse(row.getString("played_on")),
        LocalTime.parse(row.getString("starts_at")),
        made(row.getString("venue_id"), VenueId::new),
        made(row.getString("group_id"), GroupId::new),
        PlanJson.read(row.getString("plan")),
        Session.State.valueOf(row.getString("state")));
  }

  private static <T> @Nullable T made(
      @Nullable String text, java.util.function.Function<String, T> making) {
    return text == null ? null : making.apply(text);
  }
}
