package rallywright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;

/** The rows of players. */
final class PlayerRows {

  private static final String COLUMNS =
      "select id, name, level, hand, notes, age_group, standing from player";

  private PlayerRows() {}

  static List<Player> all(JdbcClient client) {
    Map<String, Set<Limit>> limits = new HashMap<>();
    client
        .sql("select player_id, avoided from player_limit")
        .query(
            (RowCallbackHandler)
                row ->
                    limits
                        .computeIfAbsent(row.getString(1), id -> EnumSet.noneOf(Limit.class))
                        .add(Limit.valueOf(row.getString(2))));
    return client
        .sql(COLUMNS + " order by lower(name), id")
        .query((row, number) -> player(row, limits.getOrDefault(row.getString("id"), Set.of())))
        .list();
  }

  static Optional<Player> find(JdbcClient client, PlayerId id) {
    Set<Limit> limits = EnumSet.noneOf(Limit.class);
    client
        .sql("select avoided from player_limit where player_id = :id")
        .param("id", id.value())
        .query((RowCallbackHandler) row -> limits.add(Limit.valueOf(row.getString(1))));
    return client
        .sql(COLUMNS + " where id = :id")
        .param("id", id.value())
        .query((row, number) -> player(row, limits))
        .optional();
  }

  static void put(JdbcClient client, Player player) {
    Level level = player.level();
    client
        .sql(
            """
            insert into player (id, name, level, hand, notes, age_group, standing)
            values (:id, :name, :level, :hand, :notes, :age, :standing)
            on conflict (id) do update set name = excluded.name, level = excluded.level,
              hand = excluded.hand, notes = excluded.notes, age_group = excluded.age_group,
              standing = excluded.standing
            """)
        .param("id", player.id().value())
        .param("name", player.name())
        .param("level", level == null ? null : level.value(), java.sql.Types.DOUBLE)
        .param("hand", player.hand().name())
        .param("notes", player.notes())
        .param("age", player.ageGroup().name())
        .param("standing", player.standing().name())
        .update();
    client
        .sql("delete from player_limit where player_id = :id")
        .param("id", player.id().value())
        .update();
    for (Limit limit : player.limits()) {
      client
          .sql("insert into player_limit (player_id, avoided) values (:id, :limit)")
          .param("id", player.id().value())
          .param("limit", limit.name())
          .update();
    }
  }

  static void delete(JdbcClient client, PlayerId id) {
    client.sql("delete from player where id = :id").param("id", id.value()).update();
  }

  /** The ids out of the given ones that no player has. */
  static List<PlayerId> missing(JdbcClient client, Set<PlayerId> ids) {
    List<PlayerId> missing = new ArrayList<>(ids);
    if (!ids.isEmpty()) {
      Set<PlayerId> found =
          Set.copyOf(client.sql("select id from player").query(String.class).list()).stream()
              .map(PlayerId::new)
              .collect(java.util.stream.Collectors.toSet());
      missing.removeAll(found);
    }
    return missing;
  }

  private static Player player(ResultSet row, Set<Limit> limits) throws SQLException {
    double estimate = row.getDouble("level");
    Level level = row.wasNull() ? null : new Level(estimate);
    return new Player(
        new PlayerId(row.getString("id")),
        row.getString("name"),
        level,
        Hand.valueOf(row.getString("hand")),
        limits,
        row.getString("notes"),
        AgeGroup.valueOf(row.getString("age_group")),
        Standing.valueOf(row.getString("standing")));
  }
}
