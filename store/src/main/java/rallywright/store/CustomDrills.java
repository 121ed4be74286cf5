package rallywright.store;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.jdbc.core.RowCallbackHandler;
import rallywright.engine.drill.DrillKey;

/** The coach's own drills, each as the text of its file; what the text says is not checked here. */
public final class CustomDrills {

  private final Database database;

  CustomDrills(Database database) {
    this.database = database;
  }

  /**
   * All drills.
   *
   * @return the texts by key
   */
  public Map<DrillKey, String> all() {
    return database.read(
        client -> {
          Map<DrillKey, String> all = new LinkedHashMap<>();
          client
              .sql("select drill_key, yaml from custom_drill order by drill_key")
              .query(
                  (RowCallbackHandler)
                      row -> all.put(new DrillKey(row.getString(1)), row.getString(2)));
          return all;
        });
  }

  /**
   * Adds a drill or replaces the one of that key.
   *
   * @param key its key
   * @param yaml the text of its file
   */
  public void save(DrillKey key, String yaml) {
    database.change(
        client ->
            client
                .sql(
                    """
                    insert into custom_drill (drill_key, yaml) values (:key, :yaml)
                    on conflict (drill_key) do update set yaml = excluded.yaml
                    """)
                .param("key", key.value())
                .param("yaml", yaml)
                .update());
  }

  /**
   * Takes a drill away.
   *
   * @param key its key
   */
  public void remove(DrillKey key) {
    database.change(
        client ->
            client
                .sql("delete from custom_drill where drill_key = :key")
                .param("key", key.value())
                .update());
  }
}
