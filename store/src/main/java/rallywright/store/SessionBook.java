package rallywright.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;

/**
 * The club's diary: sessions planned and played, and plans kept as templates.
 *
 * <p>Plans name players by id only. The name of a session is the coach's own text; erasing a person
 * does not look into it.
 */
public final class SessionBook {

  private static final int LONGEST_NAME = 80;

  private final Database database;

  SessionBook(Database database) {
    this.database = database;
  }

  /**
   * All sessions.
   *
   * @return the sessions, newest first
   */
  public List<Session> all() {
    return database.read(SessionRows::all);
  }

  /**
   * The newest session that was begun and starts no later than another one.
   *
   * @param other the other one
   * @return its id; empty where the other one is the first
   */
  public Optional<SessionId> lastBegunBefore(Session other) {
    return database.read(client -> SessionRows.lastBegunBefore(client, other));
  }

  /**
   * One session.
   *
   * @param id the session's id
   * @return the session, if there is one of that id
   */
  public Optional<Session> find(SessionId id) {
    return database.read(client -> SessionRows.find(client, id));
  }

  /**
   * Adds a session or replaces the one of that id.
   *
   * @param session the session
   * @throws StoreProblem if it names a player, a venue or a group that the club does not have
   */
  public void save(Session session) {
    database.change(
        client -> {
          String what = "The session \"" + session.name() + "\"";
          refuseStrangers(client, what, session.plan());
          if (session.venue() != null) {
            refuseMissing(client, what, "venue", session.venue().value());
          }
          if (session.group() != null) {
            refuseMissing(client, what, "training_group", session.group().value());
          }
          SessionRows.put(client, session);
          return session;
        });
  }

  /**
   * Takes a planned session away.
   *
   * @param id the session's id
   * @throws StoreProblem if there is no such session, or it has begun
   */
  public void removePlanned(SessionId id) {
    database.change(
        client -> {
          Session session =
              SessionRows.find(client, id)
                  .orElseThrow(
                      () ->
                          new StoreProblem(
                              "There is no session with the id "
                                  + id
                                  + ". Maybe removed already."));
          if (session.state() != Session.State.PLANNED || EventRows.anyOf(client, id)) {
            throw new StoreProblem(
                "The session \""
                    + session.name()
                    + "\" has begun and is kept; only a planned session can be removed.");
          }
          return client
              .sql("delete from training_session where id = :id")
              .param("id", id.value())
              .update();
        });
  }

  /**
   * The plans kept as templates.
   *
   * @return the plans by name
   */
  public Map<String, SessionPlan> templates() {
    return database.read(SessionRows::templates);
  }

  /**
   * Keeps a plan as a template; replaces one of that name.
   *
   * @param name what the coach calls it, 1 to 80 characters
   * @param plan the plan
   * @throws IllegalArgumentException if the name is empty or too long
   * @throws StoreProblem if the plan names a player whom the club does not have
   */
  public void saveTemplate(String name, SessionPlan plan) {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException(
          "The template's name \"" + name + "\" must have 1 to " + LONGEST_NAME + " characters.");
    }
    database.change(
        client -> {
          refuseStrangers(client, "The template \"" + name + "\"", plan);
          SessionRows.put(client, name, plan);
          return name;
        });
  }

  /**
   * Takes a template away.
   *
   * @param name its name
   */
  public void removeTemplate(String name) {
    database.change(
        client ->
            client
                .sql("delete from plan_template where name = :name")
                .param("name", name)
                .update());
  }

  private static void refuseStrangers(JdbcClient client, String what, SessionPlan plan) {
    List<PlayerId> missing = PlayerRows.missing(client, PlanPlayers.named(plan));
    if (!missing.isEmpty()) {
      throw new StoreProblem(
          what
              + " names players who are not in the club: "
              + missing
              + ". Add them first, or plan again with those who are there.");
    }
  }

  private static void refuseMissing(JdbcClient client, String what, String table, String id) {
    int found =
        client
            .sql("select count(*) from " + table + " where id = :id")
            .param("id", id)
            .query(Integer.class)
            .single();
    if (found == 0) {
      String thing = table.equals("venue") ? "venue" : "group";
      throw new StoreProblem(
          what + " names a " + thing + " that the club does not have (" + id + ").");
    }
  }
}
