package rallywright.store;

import java.util.List;
import java.util.Optional;
import rallywright.engine.rotation.SavedDay;

/**
 * Days of games with rotating partners. They name players by id only; somebody who was erased with
 * all games is a number in them that no player has.
 */
public final class DayBook {

  private final Database database;

  DayBook(Database database) {
    this.database = database;
  }

  /**
   * All days.
   *
   * @return the days, newest first
   */
  public List<SavedDay> all() {
    return database.read(DayRows::all);
  }

  /**
   * One day.
   *
   * @param id its id
   * @return the day, if there is one of that id
   */
  public Optional<SavedDay> find(String id) {
    return database.read(client -> DayRows.find(client, id));
  }

  /**
   * Adds a day or replaces the one of that id.
   *
   * @param day the day
   */
  public void save(SavedDay day) {
    database.change(
        client -> {
          DayRows.put(client, day);
          return day;
        });
  }

  /**
   * Takes a day away for good.
   *
   * @param id its id
   */
  public void remove(String id) {
    database.change(
        client -> {
          DayRows.delete(client, id);
          return id;
        });
  }
}
