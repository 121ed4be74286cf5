package rallywright.store;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.plan.GameId;
import rallywright.engine.rotation.SavedDay;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.Session;

/** Puts a player of the club in a walk-in's place, inside one change. */
final class WalkInMerge {

  private final JdbcClient client;

  WalkInMerge(JdbcClient client) {
    this.client = client;
  }

  void merge(PlayerId walkInId, PlayerId intoId) {
    Player walkIn = player(walkInId);
    Player into = player(intoId);
    if (walkIn.standing() != Standing.WALK_IN) {
      throw new StoreProblem(
          "\"" + walkIn.name() + "\" is no walk-in, so it is not merged. Choose a walk-in.");
    }
    if (walkInId.equals(intoId) || into.standing() == Standing.ERASED) {
      throw new StoreProblem(
          "\""
              + walkIn.name()
              + "\" cannot be merged into \""
              + into.name()
              + "\". Choose another player of the club.");
    }
    UnaryOperator<PlayerId> other = id -> id.equals(walkInId) ? intoId : id;
    for (Session session : SessionRows.all(client)) {
      mergeIn(session, walkIn, into, other);
    }
    SessionRows.templates(client)
        .forEach((name, plan) -> SessionRows.put(client, name, PlanPlayers.replaced(plan, other)));
    mergeInDays(walkIn, into, other);
    for (StoredEvent stored : EventRows.all(client)) {
      CourtEvent changed = EventSubjects.withPlayer(stored.event(), other);
      if (!changed.equals(stored.event())) {
        EventRows.replace(client, changed);
      }
    }
    PlayerRows.put(client, joined(into, walkIn));
    moveGroups(walkInId, intoId);
    PlayerRows.delete(client, walkInId);
    remember(client, walkInId, intoId);
  }

  private void mergeIn(Session session, Player walkIn, Player into, UnaryOperator<PlayerId> other) {
    Set<GameId> both = PlanPlayers.gamesOf(session.plan(), walkIn.id());
    both.retainAll(PlanPlayers.gamesOf(session.plan(), into.id()));
    if (!both.isEmpty()) {
      throw new StoreProblem(
          "\""
              + walkIn.name()
              + "\" and \""
              + into.name()
              + "\" play in one game of \""
              + session.name()
              + "\" ("
              + session.date()
              + "), so they are two people. Nothing was changed. Choose another player.");
    }
    if (PlanPlayers.named(session.plan()).contains(walkIn.id())) {
      SessionRows.put(client, session.withPlan(PlanPlayers.replaced(session.plan(), other)));
    }
  }

  private void mergeInDays(Player walkIn, Player into, UnaryOperator<PlayerId> other) {
    for (SavedDay day : DayRows.all(client)) {
      if (day.named().containsAll(Set.of(walkIn.id(), into.id()))) {
        throw new StoreProblem(
            "\"%s\" and \"%s\" both play on \"%s\" (%s), so they are two people."
                    .formatted(walkIn.name(), into.name(), day.name(), day.date())
                + " Nothing was changed. Choose another player.");
      }
    }
    DayRows.replace(client, other);
  }

  private static Player joined(Player into, Player walkIn) {
    Set<Limit> limits = EnumSet.noneOf(Limit.class);
    limits.addAll(into.limits());
    limits.addAll(walkIn.limits());
    return new Player(
        into.id(),
        into.name(),
        into.level(),
        into.hand(),
        limits,
        (into.notes() + "\n" + walkIn.notes()).strip(),
        into.ageGroup(),
        into.standing());
  }

  private void moveGroups(PlayerId walkIn, PlayerId into) {
    client
        .sql(
            """
            insert into group_member (group_id, player_id)
            select group_id, :into from group_member where player_id = :walkIn
            on conflict (group_id, player_id) do nothing
            """)
        .param("into", into.value())
        .param("walkIn", walkIn.value())
        .update();
  }

  /** Notes for good that a walk-in is now another player. */
  static void remember(JdbcClient client, PlayerId walkIn, PlayerId into) {
    client
        .sql("update merged_player set into_id = :into where into_id = :walkIn")
        .param("into", into.value())
        .param("walkIn", walkIn.value())
        .update();
    client
        .sql(
            """
            insert into merged_player (id, into_id) values (:walkIn, :into)
            on conflict (id) do update set into_id = excluded.into_id
            """)
        .param("into", into.value())
        .param("walkIn", walkIn.value())
        .update();
  }

  private Player player(PlayerId id) {
    return PlayerRows.find(client, id)
        .orElseThrow(() -> new StoreProblem("There is no player with the id " + id + "."));
  }
}
