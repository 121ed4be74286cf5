package rallywright.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.rotation.SavedDay;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.store.ClubContents.Mark;

/** Gives out and takes in everything at once. */
final class ContentsRows {

  private final ClubStore store;
  private final Database database;

  ContentsRows(ClubStore store, Database database) {
    this.store = store;
    this.database = database;
  }

  /** Everything, as it is at one moment. */
  ClubContents all() {
    return database.snapshot(
        () ->
            database.read(
                client -> {
                  Map<String, String> settings = new LinkedHashMap<>(store.settings().all());
                  settings.keySet().removeIf(name -> name.startsWith(Settings.SECRET_PREFIX));
                  return new ClubContents(
                      PlayerRows.all(client),
                      store.groups().all(),
                      store.venues().all(),
                      SessionRows.all(client),
                      SessionRows.templates(client),
                      EventRows.all(client).stream().map(StoredEvent::event).toList(),
                      settings,
                      store.customDrills().all(),
                      marks(client),
                      merged(client),
                      DayRows.all(client));
                }));
  }

  /** Whether nobody has entered anything yet; settings do not count. */
  boolean isEmpty() {
    return database.read(
        client ->
            client
                    .sql(
                        """
                        select (select count(*) from player) + (select count(*) from venue)
                          + (select count(*) from training_group)
                          + (select count(*) from training_session)
                          + (select count(*) from play_day)
                          + (select count(*) from plan_template)
                          + (select count(*) from custom_drill)
                        """)
                    .query(Long.class)
                    .single()
                == 0);
  }

  /**
   * Takes everything in as one change; what has the same id is replaced. What was erased here stays
   * erased, what was erased there is erased here, and merged walk-ins stay merged.
   */
  void take(ClubContents contents) {
    database.change(
        client -> {
          takePeople(client, contents);
          Forgotten forgotten = Forgotten.of(client);
          contents.venues().forEach(store.venues()::save);
          contents.groups().forEach(group -> store.groups().save(here(group, forgotten)));
          for (Session session : contents.sessions()) {
            store.sessions().save(session.withPlan(here(session.plan(), forgotten)));
          }
          contents
              .templates()
              .forEach((name, plan) -> store.sessions().saveTemplate(name, here(plan, forgotten)));
          contents.days().forEach(day -> DayRows.put(client, here(day, forgotten)));
          store.events().append(contents.events());
          contents.settings().forEach(store.settings()::put);
          contents.drills().forEach(store.customDrills()::save);
          return contents;
        });
  }

  private void takePeople(JdbcClient client, ClubContents contents) {
    Forgotten here = Forgotten.of(client);
    for (Player player : contents.players()) {
      boolean gone = here.has(player.id()) || here.isNameless(player.id());
      if (gone || here.merged().containsKey(player.id())) {
        continue;
      }
      boolean erasedThere = player.standing() == Standing.ERASED;
      if (erasedThere && PlayerRows.find(client, player.id()).isPresent()) {
        new Erasure(client).erase(player.id(), ErasedGames.KEEP);
      }
      PlayerRows.put(client, player);
    }
    contents.merged().forEach((walkIn, into) -> merge(client, walkIn, into));
    for (Mark mark : contents.forgotten()) {
      if (mark.kind().equals(Forgotten.PLAYER)) {
        PlayerId gone = new PlayerId(mark.id());
        if (PlayerRows.find(client, gone).isPresent()) {
          new Erasure(client).erase(gone, ErasedGames.REMOVE);
        }
      } else if (mark.kind().equals(Forgotten.EVENT)) {
        EventRows.delete(client, new EventId(mark.id()));
      }
      Forgotten.add(client, mark.kind(), mark.id());
    }
  }

  private static void merge(JdbcClient client, PlayerId walkIn, PlayerId into) {
    if (PlayerRows.find(client, walkIn).isPresent()) {
      new WalkInMerge(client).merge(walkIn, into);
    } else {
      WalkInMerge.remember(client, walkIn, into);
    }
  }

  private static Group here(Group group, Forgotten forgotten) {
    return new Group(
        group.id(),
        group.name(),
        group.members().stream()
            .map(forgotten::now)
            .filter(member -> !forgotten.has(member) && !forgotten.isNameless(member))
            .collect(java.util.stream.Collectors.toSet()));
  }

  private static SessionPlan here(SessionPlan plan, Forgotten forgotten) {
    SessionPlan changed = PlanPlayers.replaced(plan, forgotten::now);
    for (PlayerId player : PlanPlayers.named(changed)) {
      if (forgotten.has(player) || forgotten.isNameless(player)) {
        changed = PlanPlayers.withoutReasons(changed);
      }
      if (forgotten.has(player)) {
        changed = PlanPlayers.without(changed, player);
      }
    }
    return changed;
  }

  private static SavedDay here(SavedDay day, Forgotten forgotten) {
    SavedDay changed = day.replaced(forgotten::now);
    for (PlayerId player : changed.named()) {
      if (forgotten.has(player)) {
        changed = DayRows.without(changed, player);
      }
    }
    return changed;
  }

  private static List<Mark> marks(JdbcClient client) {
    return client
        .sql("select kind, id from forgotten order by kind, id")
        .query((row, number) -> new Mark(row.getString(1), row.getString(2)))
        .list();
  }

  private static Map<PlayerId, PlayerId> merged(JdbcClient client) {
    Map<PlayerId, PlayerId> merged = new LinkedHashMap<>();
    client
        .sql("select id, into_id from merged_player order by id")
        .query(
            (RowCallbackHandler)
                row -> merged.put(new PlayerId(row.getString(1)), new PlayerId(row.getString(2))));
    return merged;
  }
}
