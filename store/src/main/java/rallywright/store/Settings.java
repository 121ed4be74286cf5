package rallywright.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.RowCallbackHandler;

/**
 * Small settings by name, for example {@code units}. One whose name begins with {@value
 * #SECRET_PREFIX}, such as a password's hash, never leaves in an export.
 */
public final class Settings {

  /** How the names of settings begin that stay in the house. */
  public static final String SECRET_PREFIX = "secret.";

  private final Database database;

  Settings(Database database) {
    this.database = database;
  }

  /**
   * One setting.
   *
   * @param name its name
   * @return its text, if it was ever put
   */
  public Optional<String> get(String name) {
    return database.read(
        client ->
            client
                .sql("select content from setting where name = :name")
                .param("name", name)
                .query(String.class)
                .optional());
  }

  /**
   * All settings, secret ones too.
   *
   * @return the texts by name
   */
  public Map<String, String> all() {
    return database.read(
        client -> {
          Map<String, String> all = new LinkedHashMap<>();
          client
              .sql("select name, content from setting order by name")
              .query((RowCallbackHandler) row -> all.put(row.getString(1), row.getString(2)));
          return all;
        });
  }

  /**
   * Puts a setting, new or in place of the old.
   *
   * @param name its name
   * @param content its text
   */
  public void put(String name, String content) {
    database.change(
        client ->
            client
                .sql(
                    """
                    insert into setting (name, content) values (:name, :content)
                    on conflict (name) do update set content = excluded.content
                    """)
                .param("name", name)
                .param("content", content)
                .update());
  }

  /**
   * Takes a setting away.
   *
   * @param name its name
   */
  public void remove(String name) {
    database.change(
        client ->
            client.sql("delete from setting where name = :name").param("name", name).update());
  }
}
