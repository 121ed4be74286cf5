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
  private final ChangeTrail trail;
  private final KeptSessions kept;

  SessionDesk(ClubStore store, DrillBook drills, WeatherBook weather, ChangeTrail trail) {
    this.store = store;
    this.drills = drills;
    this.weather = weather;
    this.trail = trail;
    this.kept = new KeptSessions(store, trail);
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
    return kept.find(id, () -> store.sessions().find(id).map(this::opened));
  }

  private OpenSession opened(Session session) {
    return new OpenSession(
        new SessionCast(session, drills, playersOf(session), venue(session.venue())),
        store.events().after(session.id(), 0));
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
   * @param open the session that they belong to
   * @param events events that have been checked
   * @return the ids under which something else is kept already
   */
  Set<EventId> keep(OpenSession open, List<CourtEvent> events) {
    SessionId session = open.session().id();
    boolean partOfMore = store.isChanging();
    boolean mayChangeState =
        open.session().state() != Session.State.RUNNING
            || events.stream().anyMatch(SessionDesk::mayBeginOrEnd);
    Written written =
        store.inOneStep(
            () -> {
              EventLog.Appended appended = store.events().append(events);
              boolean noted =
                  mayChangeState
                      && appended.added() > 0
                      && store.sessions().find(session).filter(this::noteState).isPresent();
              return new Written(appended, noted, store.revision());
            });
    if (!written.stateNoted() && !partOfMore) {
      trail.added(written.revision(), session);
    }
    return new HashSet<>(written.appended().differing());
  }

  /** What a step did, and the revision that it made. */
  private record Written(EventLog.Appended appended, boolean stateNoted, long revision) {}

  /** A running session goes on running whatever is scored in it. */
  private static boolean mayBeginOrEnd(CourtEvent event) {
    return event instanceof CourtEvent.SessionEnded
        || event instanceof CourtEvent.Undone
        || event instanceof CourtEvent.BlockStarted
        || event instanceof CourtEvent.BlockEnded;
  }

  /** Whether the state had to be changed. */
  private boolean noteState(Session session) {
    OpenSession open = opened(session);
    if (session.state() == Session.State.PLANNED && open.isOnlyNotedOn()) {
      return false;
    }
    Session.State state = open.progress().isEnded() ? Session.State.DONE : Session.State.RUNNING;
    if (session.state() == state) {
      return false;
    }
    store.sessions().save(session.withState(state));
    return true;
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

  /** The same of a session that was found, kept while only entries come. */
  public List<String> namesBeside(OpenSession open) {
    return open.cast().namesBeside(() -> namesBeside(open.session()));
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
                      keepTyped(open, act.events());
                      return act.said();
                    }));
  }

  /** Keeps events that were typed in at the desk. */
  public void keepTyped(OpenSession session, List<CourtEvent> events) {
    if (!events.isEmpty()) {
      keep(session, events);
    }
  }
}
