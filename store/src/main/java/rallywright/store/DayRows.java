package rallywright.store;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.SavedDay;
import rallywright.store.json.DayJson;

/** The rows of days of games. */
final class DayRows {

  private DayRows() {}

  static List<SavedDay> all(JdbcClient client) {
    return client
        .sql("select body from play_day order by played_on desc, id desc")
        .query((row, number) -> DayJson.read(row.getString(1)))
        .list();
  }

  static Optional<SavedDay> find(JdbcClient client, String id) {
    return client
        .sql("select body from play_day where id = :id")
        .param("id", id)
        .query((row, number) -> DayJson.read(row.getString(1)))
        .optional();
  }

  static void put(JdbcClient client, SavedDay day) {
    client
        .sql(
            """
            insert into play_day (id, name, played_on, body) values (:id, :name, :day, :body)
            on conflict (id) do update set name = excluded.name,
              played_on = excluded.played_on, body = excluded.body
            """)
        .param("id", day.id())
        .param("name", day.name())
        .param("day", day.date().toString())
        .param("body", DayJson.write(day))
        .update();
  }

  static void delete(JdbcClient client, String id) {
    client.sql("delete from play_day where id = :id").param("id", id).update();
  }

  /** Puts other players in place of some in every day. */
  static void replace(JdbcClient client, UnaryOperator<PlayerId> other) {
    for (SavedDay day : all(client)) {
      SavedDay changed = day.replaced(other);
      if (!changed.equals(day)) {
        put(client, changed);
      }
    }
  }

  /** Takes a player out of every day: what is left is a number that says nothing about anybody. */
  static void forget(JdbcClient client, PlayerId gone) {
    for (SavedDay day : all(client)) {
      if (day.named().contains(gone)) {
        put(client, without(day, gone));
      }
    }
  }

  static SavedDay without(SavedDay day, PlayerId gone) {
    int number = 1;
    while (day.named().contains(nobody(number))) {
      number++;
    }
    PlayerId nobody = nobody(number);
    return day.replaced(id -> id.equals(gone) ? nobody : id);
  }

  private static PlayerId nobody(int number) {
    return new PlayerId("nobody-" + number);
  }
}
