package rallywright.store;

import java.util.List;
import java.util.Optional;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;

/** The places where the club plays. */
public final class VenueBook {

  private final Database database;

  VenueBook(Database database) {
    this.database = database;
  }

  /**
   * All venues.
   *
   * @return the venues by name
   */
  public List<Venue> all() {
    return database.read(
        client ->
            client
                .sql(
                    """
                    select id, name, courts, setting, ball, surface, altitude_metres
                    from venue order by lower(name), id
                    """)
                .query(
                    (row, number) ->
                        new Venue(
                            new VenueId(row.getString(1)),
                            row.getString(2),
                            row.getInt(3),
                            Venue.Setting.valueOf(row.getString(4)),
                            row.getString(5),
                            row.getString(6),
                            row.getDouble(7)))
                .list());
  }

  /**
   * One venue.
   *
   * @param id the venue's id
   * @return the venue, if there is one of that id
   */
  public Optional<Venue> find(VenueId id) {
    return all().stream().filter(venue -> venue.id().equals(id)).findFirst();
  }

  /**
   * Adds a venue or replaces the one of that id.
   *
   * @param venue the venue
   */
  public void save(Venue venue) {
    database.change(
        client ->
            client
                .sql(
                    """
                    insert into venue (id, name, courts, setting, ball, surface, altitude_metres)
                    values (:id, :name, :courts, :setting, :ball, :surface, :altitude)
                    on conflict (id) do update set name = excluded.name,
                      courts = excluded.courts, setting = excluded.setting,
                      ball = excluded.ball, surface = excluded.surface,
                      altitude_metres = excluded.altitude_metres
                    """)
                .param("id", venue.id().value())
                .param("name", venue.name())
                .param("courts", venue.courts())
                .param("setting", venue.setting().name())
                .param("ball", venue.ball())
                .param("surface", venue.surface())
                .param("altitude", venue.altitudeMetres())
                .update());
  }

  /**
   * Takes a venue away; sessions that were held there stay.
   *
   * @param id the venue's id
   */
  public void remove(VenueId id) {
    database.change(
        client -> client.sql("delete from venue where id = :id").param("id", id.value()).update());
  }
}
