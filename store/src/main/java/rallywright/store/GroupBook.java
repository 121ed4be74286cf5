package rallywright.store;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.RowCallbackHandler;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.PlayerId;

/** The groups of the club. */
public final class GroupBook {

  private final Database database;

  GroupBook(Database database) {
    this.database = database;
  }

  /**
   * All groups.
   *
   * @return the groups by name
   */
  public List<Group> all() {
    return database.snapshot(
        () ->
            database.read(
                client -> {
                  Map<String, Set<PlayerId>> members = new HashMap<>();
                  client
                      .sql("select group_id, player_id from group_member")
                      .query(
                          (RowCallbackHandler)
                              row ->
                                  members
                                      .computeIfAbsent(row.getString(1), id -> new HashSet<>())
                                      .add(new PlayerId(row.getString(2))));
                  return client
                      .sql("select id, name from training_group order by lower(name), id")
                      .query(
                          (row, number) ->
                              new Group(
                                  new GroupId(row.getString(1)),
                                  row.getString(2),
                                  members.getOrDefault(row.getString(1), Set.of())))
                      .list();
                }));
  }

  /**
   * One group.
   *
   * @param id the group's id
   * @return the group, if there is one of that id
   */
  public Optional<Group> find(GroupId id) {
    return all().stream().filter(group -> group.id().equals(id)).findFirst();
  }

  /**
   * Adds a group or replaces the one of that id.
   *
   * @param group the group
   * @throws StoreProblem if it names a player who is not in the club
   */
  public void save(Group group) {
    database.change(
        client -> {
          List<PlayerId> missing = PlayerRows.missing(client, group.members());
          if (!missing.isEmpty()) {
            throw new StoreProblem(
                "The group \""
                    + group.name()
                    + "\" names players who are not in the club: "
                    + missing
                    + ". Add them first.");
          }
          String id = group.id().value();
          client
              .sql(
                  """
                  insert into training_group (id, name) values (:id, :name)
                  on conflict (id) do update set name = excluded.name
                  """)
              .param("id", id)
              .param("name", group.name())
              .update();
          client.sql("delete from group_member where group_id = :id").param("id", id).update();
          for (PlayerId member : group.members()) {
            client
                .sql("insert into group_member (group_id, player_id) values (:id, :player)")
                .param("id", id)
                .param("player", member.value())
                .update();
          }
          return id;
        });
  }

  /**
   * Takes a group away; its players and sessions stay.
   *
   * @param id the group's id
   */
  public void remove(GroupId id) {
    database.change(
        client ->
            client
                .sql("delete from training_group where id = :id")
                .param("id", id.value())
                .update());
  }
}
