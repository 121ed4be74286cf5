package rallywright.store;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.plan.GameId;
import rallywright.engine.session.EventId;
import rallywright.engine.session.SessionId;

/** What was taken away for good and must not come back with a late phone or an old form. */
final class Forgotten {

  static final String EVENT = "event";
  static final String GAME = "game";
  static final String PLAYER = "player";

  /** The kinds of things that are marked. */
  static final Set<String> KINDS = Set.of(EVENT, GAME, PLAYER);

  private final Set<String> marks = new HashSet<>();
  private final Map<PlayerId, PlayerId> merged = new HashMap<>();

  private Forgotten() {}

  static Forgotten of(JdbcClient client) {
    Forgotten forgotten = new Forgotten();
    client
        .sql("select kind, id from forgotten")
        .query(
            (RowCallbackHandler)
                row -> forgotten.marks.add(row.getString(1) + " " + row.getString(2)));
    client
        .sql("select id, into_id from merged_player")
        .query(
            (RowCallbackHandler)
                row ->
                    forgotten.merged.put(
                        new PlayerId(row.getString(1)), new PlayerId(row.getString(2))));
    client
        .sql("select id from player where standing = :erased")
        .param("erased", Standing.ERASED.name())
        .query((RowCallbackHandler) row -> forgotten.marks.add("nameless " + row.getString(1)));
    return forgotten;
  }

  boolean has(EventId event) {
    return marks.contains(EVENT + " " + event);
  }

  boolean has(SessionId session, GameId game) {
    return marks.contains(GAME + " " + gameMark(session, game));
  }

  boolean has(PlayerId player) {
    return marks.contains(PLAYER + " " + player);
  }

  boolean isNameless(PlayerId player) {
    return marks.contains("nameless " + player);
  }

  PlayerId now(PlayerId player) {
    return merged.getOrDefault(player, player);
  }

  Map<PlayerId, PlayerId> merged() {
    return merged;
  }

  /** Refuses to bring back somebody who was erased or merged. */
  void refuseReturn(JdbcClient client, Player player) {
    boolean revived = isNameless(player.id()) && player.standing() != Standing.ERASED;
    if (has(player.id()) || revived) {
      throw new StoreProblem(
          "The player \""
              + player.name()
              + "\" was erased for good and cannot be changed. Add the person as a new player.");
    }
    PlayerId into = merged.get(player.id());
    if (into != null) {
      Optional<Player> other = PlayerRows.find(client, into);
      throw new StoreProblem(
          "The walk-in \""
              + player.name()
              + "\" was merged into \""
              + other.map(Player::name).orElse(into.value())
              + "\". Change that player instead.");
    }
  }

  static void add(JdbcClient client, EventId event) {
    add(client, EVENT, event.value());
  }

  static void add(JdbcClient client, SessionId session, GameId game) {
    add(client, GAME, gameMark(session, game));
  }

  static void add(JdbcClient client, PlayerId player) {
    add(client, PLAYER, player.value());
  }

  static void add(JdbcClient client, String kind, String id) {
    client
        .sql(
            """
            insert into forgotten (kind, id) values (:kind, :id)
            on conflict (kind, id) do nothing
            """)
        .param("kind", kind)
        .param("id", id)
        .update();
  }

  private static String gameMark(SessionId session, GameId game) {
    return session + " " + game;
  }
}
