package rallywright.web.oncourt;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.paper.DrillBook;
import rallywright.store.ClubStore;
import rallywright.store.EventLog;
import rallywright.store.KeyBook;
import rallywright.store.StoreProblem;
import rallywright.web.weather.WeatherBook;

/** Joins what is stored of a session with its drills, and takes in what happened on court. */
@Component
public final class SessionDesk {

  private final ClubStore store;
  private final DrillBook drills;
  private final WeatherBook weather;

  SessionDesk(ClubStore store, DrillBook drills, WeatherBook weather) {
    this.store = store;
    this.drills = drills;
    this.weather = weather;
  }

  /** Every session, the newest first. */
  public List<Session> all() {
    return store.sessions().all().stream()
        .sorted(
            java.util.Comparator.comparing(Session::date).thenComparing(Session::start).reversed())
        .toList();
  }

  /** The weather that is expected for sessions. */
  public WeatherBook weather() {
    return weather;
  }

  /** The groups that sessions can be for. */
  public List<Group> groups() {
    return store.groups().all();
  }

  /** The session of this id with all that belongs to it. */
  public Optional<OpenSession> find(SessionId id) {
    return store.atOneMoment(() -> store.sessions().find(id).map(this::opened));
  }

  private OpenSession opened(Session session) {
    return new OpenSession(
        session,
        drills,
        playersOf(session),
        venue(session.venue()),
        store.events().of(session.id()));
  }

  /** Those who take part, first in the plan's order, then whoever else stands in a game. */
  private List<Player> playersOf(Session session) {
    Set<PlayerId> ids = new java.util.LinkedHashSet<>(session.plan().present());
    session.plan().blocks().stream()
        .flatMap(block -> block.games().stream())
        .forEach(
            game -> {
              ids.addAll(game.a().players());
              ids.addAll(game.b().players());
            });
    List<Player> players = new ArrayList<>();
    ids.forEach(id -> store.players().find(id).ifPresent(players::add));
    return players;
  }

  private @Nullable Venue venue(@Nullable VenueId id) {
    return id == null ? null : store.venues().find(id).orElse(null);
  }

  /**
   * Keeps events; they are on the disk when this returns.
   *
   * @param session the session that they belong to
   * @param events events that have been checked
   * @return the ids under which something else is kept already
   */
  Set<EventId> keep(SessionId session, List<CourtEvent> events) {
    return store.inOneStep(
        () -> {
          EventLog.Appended appended = store.events().append(events);
          if (appended.added() > 0) {
            store.sessions().find(session).map(this::opened).ifPresent(this::noteState);
          }
          return new HashSet<>(appended.differing());
        });
  }

  private void noteState(OpenSession open) {
    if (open.session().state() == Session.State.PLANNED && open.isOnlyNotedOn()) {
      return;
    }
    Session.State state = open.progress().isEnded() ? Session.State.DONE : Session.State.RUNNING;
    if (open.session().state() != state) {
      store.sessions().save(open.session().withState(state));
    }
  }

  /** Takes a session away that was only planned; answers why not, or empty. */
  public Optional<String> removePlanned(SessionId session) {
    try {
      store.inOneStep(
          () -> {
            store.sessions().removePlanned(session);
            store.keys().revokeAll(KeyBook.Kind.ON_COURT, session.value());
            return session;
          });
      return Optional.empty();
    } catch (StoreProblem begun) {
      return Optional.of(String.valueOf(begun.getMessage()));
    }
  }

  /** Names that the club knows and that do not take part in a session yet. */
  public List<String> namesBeside(Session session) {
    return store.players().all().stream()
        .filter(each -> each.standing() == Standing.ACTIVE || each.standing() == Standing.WALK_IN)
        .filter(each -> !session.plan().present().contains(each.id()))
        .map(Player::name)
        .toList();
  }

  /** A new id for a walk-in whose name is typed at the desk. */
  public PlayerId freshPlayerId() {
    return new PlayerId(store.freshId());
  }

  /** A new id for an event that is made at the desk. */
  public EventId freshEventId() {
    return new EventId(store.freshId());
  }

  /**
   * Decides on what is stored at this moment and keeps what follows, in one step: two boards that
   * are pressed at once act one after the other, each on what the other left.
   *
   * @param session the session
   * @param decision what the coach wants, on the session as it stands
   * @return the sentence that the next page opens with; empty where there is no such session
   */
  public Optional<String> act(SessionId session, Function<OpenSession, CoachAct> decision) {
    return store.inOneStep(
        () ->
            find(session)
                .map(
                    open -> {
                      CoachAct act = decision.apply(open);
                      keepTyped(session, act.events());
                      return act.said();
                    }));
  }

  /** Keeps events that were typed in at the desk. */
  public void keepTyped(SessionId session, List<CourtEvent> events) {
    if (!events.isEmpty()) {
      keep(session, events);
    }
  }
}
