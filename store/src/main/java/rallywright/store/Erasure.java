package rallywright.store;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.plan.GameId;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;

/** Takes a person out of the club, inside one change. */
final class Erasure {

  /** What stands in place of the name of somebody who was erased. */
  static final String NAMELESS = "Former player";

  private final JdbcClient client;

  Erasure(JdbcClient client) {
    this.client = client;
  }

  void erase(PlayerId id, ErasedGames games) {
    Player player =
        PlayerRows.find(client, id)
            .orElseThrow(
                () ->
                    new StoreProblem(
                        "There is no player with the id " + id + ". Maybe erased already."));
    if (player.standing() != Standing.ERASED) {
      NamesInNotes.of(player).takeOut(client);
    }
    forgetReasons(id);
    client.sql("delete from group_member where player_id = :id").param("id", id.value()).update();
    if (games == ErasedGames.KEEP) {
      removeEvents(event -> EventSubjects.isPersonal(event) && isOf(event, id));
      PlayerRows.put(
          client,
          new Player(
              id, NAMELESS, null, Hand.RIGHT, Set.of(), "", AgeGroup.ADULT, Standing.ERASED));
    } else {
      removeGames(id);
      DayRows.forget(client, id);
      PlayerRows.delete(client, id);
      Forgotten.add(client, id);
      forgetMerged(id);
    }
  }

  /** Reasons of plans name people, by first names that may have been changed since. */
  private void forgetReasons(PlayerId id) {
    for (Session session : SessionRows.all(client)) {
      if (PlanPlayers.named(session.plan()).contains(id)) {
        SessionRows.put(client, session.withPlan(PlanPlayers.withoutReasons(session.plan())));
      }
    }
    SessionRows.templates(client)
        .forEach(
            (name, plan) -> {
              if (PlanPlayers.named(plan).contains(id)) {
                SessionRows.put(client, name, PlanPlayers.withoutReasons(plan));
              }
            });
  }

  /** The old ids of walk-ins who were this person must not come back either. */
  private void forgetMerged(PlayerId id) {
    client
        .sql("select id from merged_player where into_id = :id")
        .param("id", id.value())
        .query(String.class)
        .list()
        .forEach(walkIn -> Forgotten.add(client, new PlayerId(walkIn)));
    client.sql("delete from merged_player where into_id = :id").param("id", id.value()).update();
  }

  private void removeGames(PlayerId id) {
    Set<String> gone = new HashSet<>();
    for (Session session : SessionRows.all(client)) {
      for (GameId game : PlanPlayers.gamesOf(session.plan(), id)) {
        Forgotten.add(client, session.id(), game);
        gone.add(mark(session.id(), game));
      }
      if (PlanPlayers.named(session.plan()).contains(id)) {
        SessionRows.put(client, session.withPlan(PlanPlayers.without(session.plan(), id)));
      }
    }
    SessionRows.templates(client)
        .forEach((name, plan) -> SessionRows.put(client, name, PlanPlayers.without(plan, id)));
    removeEvents(
        event ->
            isOf(event, id)
                || EventSubjects.game(event)
                    .filter(game -> gone.contains(mark(event.stamp().session(), game)))
                    .isPresent());
  }

  private void removeEvents(java.util.function.Predicate<CourtEvent> goes) {
    List<CourtEvent> events = EventRows.all(client).stream().map(StoredEvent::event).toList();
    Set<EventId> gone = new HashSet<>();
    events.stream().filter(goes).forEach(event -> gone.add(event.stamp().id()));
    for (CourtEvent event : events) {
      boolean undoesGone =
          event instanceof CourtEvent.Undone undone && gone.contains(undone.undone());
      if (undoesGone || gone.contains(event.stamp().id())) {
        EventRows.delete(client, event.stamp().id());
        Forgotten.add(client, event.stamp().id());
      }
    }
  }

  private static boolean isOf(CourtEvent event, PlayerId id) {
    return EventSubjects.player(event).filter(id::equals).isPresent();
  }

  private static String mark(SessionId session, GameId game) {
    return session + " " + game;
  }
}
