package rallywright.web.oncourt;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.score.GameFormat;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionProgress;
import rallywright.paper.FirstNames;
import rallywright.store.StoredEvent;

/**
 * A session with everything that is needed to run it: its drills, who plays, what happened so far.
 */
public final class OpenSession {

  private final SessionCast cast;
  private final List<StoredEvent> log;
  private final List<CourtEvent> events;
  private final SessionProgress progress;
  private final Kept<Set<EventId>> ids = new Kept<>();

  OpenSession(SessionCast cast, List<StoredEvent> log) {
    this.cast = cast;
    this.log = List.copyOf(log);
    this.events = this.log.stream().map(StoredEvent::event).toList();
    this.progress = SessionProgress.of(cast.session(), cast::formatOf, events);
  }

  /** The same session with entries that came since. */
  OpenSession with(List<StoredEvent> more) {
    List<StoredEvent> all = new ArrayList<>(log);
    all.addAll(more);
    return new OpenSession(cast, all);
  }

  /** What stays the same while only entries come. */
  SessionCast cast() {
    return cast;
  }

  /** The place of the last event in the order of arrival, 0 if there is none. */
  long lastArrival() {
    return log.isEmpty() ? 0 : log.get(log.size() - 1).arrival();
  }

  /** The session as planned. */
  public Session session() {
    return cast.session();
  }

  /** Its plan. */
  public SessionPlan plan() {
    return session().plan();
  }

  /** What happened so far, in the order of arrival. */
  public List<CourtEvent> events() {
    return events;
  }

  /** Where it stands. */
  public SessionProgress progress() {
    return progress;
  }

  /** Who takes part, in the order of the plan. */
  public List<Player> players() {
    return cast.players();
  }

  /** The first names of those who take part. */
  public FirstNames names() {
    return cast.names();
  }

  /** Whether wind and sun do not matter. */
  public boolean isIndoors() {
    return cast.isIndoors();
  }

  /** The drill of a block; empty for yardsticks and for a drill that is no longer there. */
  public Optional<Drill> drill(PlannedBlock block) {
    return cast.drill(block);
  }

  /** The yardstick of a block, if it is one. */
  public Optional<Yardstick> yardstick(PlannedBlock block) {
    return block.kind() == PlannedBlock.Kind.YARDSTICK
        ? cast.drills().yardsticks().apply(block.drill())
        : Optional.empty();
  }

  /** What a block is called. */
  public String title(PlannedBlock block) {
    return drill(block)
        .map(Drill::name)
        .or(() -> yardstick(block).map(Yardstick::name))
        .orElseGet(() -> inWords(block));
  }

  private static String inWords(PlannedBlock block) {
    String words = block.drill().value().replace('-', ' ');
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }

  /**
   * How a game is counted, head start included. A drill that is no longer there is counted as drill
   * games are.
   */
  public GameFormat formatOf(PlannedBlock block, PlannedGame game) {
    return cast.formatOf(block, game);
  }

  /** A sentence of the engine about a game, with those who play it in the place of the sides. */
  public String named(PlannedGame game, String sentence) {
    return sentence
        .replace("side A", names().listed(game.a().players()))
        .replace("side B", names().listed(game.b().players()));
  }

  /** Whether an event is there already. */
  boolean has(EventId event) {
    return ids.or(this::idsOfEvents).contains(event);
  }

  private Set<EventId> idsOfEvents() {
    Set<EventId> all = new HashSet<>();
    events.forEach(each -> all.add(each.stamp().id()));
    return all;
  }

  /** Whether the session and what happened in it are the same as in another reading of it. */
  public boolean isAs(OpenSession other) {
    return session().equals(other.session()) && events.equals(other.events);
  }

  /** The block that is on now. */
  public Optional<PlannedBlock> current() {
    return progress.current().flatMap(plan()::block);
  }

  /** The block behind the one that is on, or that was begun last; never one before it. */
  public Optional<PlannedBlock> next() {
    List<PlannedBlock> blocks = plan().blocks();
    int at = -1;
    for (int place = 0; place < blocks.size(); place++) {
      at = progress.startedAt(blocks.get(place).id()).isPresent() ? place : at;
    }
    int from = current().map(blocks::indexOf).orElse(at);
    return blocks.stream().skip(from + 1L).findFirst();
  }

  /** The games of a block that are played, lane by lane in their order. */
  public Collection<List<PlannedGame>> lanes(PlannedBlock block) {
    Map<CourtLane, List<PlannedGame>> byLane = new LinkedHashMap<>();
    block.games().stream()
        .filter(game -> !progress.fallsAway(block.id(), game.id()))
        .sorted(
            Comparator.comparingInt((PlannedGame game) -> game.place().court())
                .thenComparing(game -> game.place().lane())
                .thenComparingInt(PlannedGame::turn))
        .forEach(game -> byLane.computeIfAbsent(game.place(), lane -> new ArrayList<>()).add(game));
    return byLane.values();
  }

  /** The games that the lanes of a block are at: on each the first that is not over. */
  public List<PlannedGame> gamesOn(PlannedBlock block) {
    return lanes(block).stream()
        .flatMap(games -> games.stream().filter(game -> !isOver(game)).limit(1))
        .toList();
  }

  /** Whether a game is over. */
  public boolean isOver(PlannedGame game) {
    return progress.game(game.id()).map(GameProgress::isOver).orElse(false);
  }

  /** Whether nothing happened yet but notes in words. */
  boolean isOnlyNotedOn() {
    return events.stream()
        .allMatch(
            event -> event instanceof CourtEvent.NoteWritten || event instanceof CourtEvent.Undone);
  }

  /** Whether a player takes part. */
  boolean has(PlayerId player) {
    return players().stream().anyMatch(each -> each.id().equals(player));
  }
}
