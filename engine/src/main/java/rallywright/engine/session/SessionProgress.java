package rallywright.engine.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.GameFormat;
import rallywright.engine.session.CourtEvent.BlockEnded;
import rallywright.engine.session.CourtEvent.BlockLimited;
import rallywright.engine.session.CourtEvent.BlockStarted;
import rallywright.engine.session.CourtEvent.ConditionsNoted;
import rallywright.engine.session.CourtEvent.EffortRated;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.FirstServerNamed;
import rallywright.engine.session.CourtEvent.RallyPlayed;
import rallywright.engine.session.CourtEvent.SessionEnded;
import rallywright.engine.session.CourtEvent.TimeCalled;
import rallywright.engine.session.CourtEvent.YardstickCounted;

/**
 * Where a session stands: a fold over its events. An undone event does not count; an undo that is
 * itself undone has no effect. The same event id counts once. The order is that of arrival, within
 * one phone that phone's own ({@link PhoneOrder}).
 */
public final class SessionProgress {

  private static final long MS_PER_MINUTE = 60_000;

  private final Session session;
  private final Map<GameId, GameProgress> games = new LinkedHashMap<>();
  private final Map<BlockId, Map<PlayerId, YardstickCounted>> yardsticks = new HashMap<>();
  private final Map<PlayerId, EffortRated> efforts = new LinkedHashMap<>();
  private final Map<BlockId, Long> starts = new LinkedHashMap<>();
  private final Map<BlockId, Long> ends = new HashMap<>();
  private Optional<BlockId> current = Optional.empty();
  private Optional<JoinedLog.Entry> newestStart = Optional.empty();
  private Optional<Conditions> conditions = Optional.empty();
  private final List<Dispute> disputes = new ArrayList<>();
  private final Map<BlockId, BlockLimited> limits = new HashMap<>();
  private SessionNotes notes = new SessionNotes(List.of(), List.of());
  private final Map<GameId, CourtEvent.Stamp> results = new HashMap<>();
  private boolean ended;

  private SessionProgress(Session session) {
    this.session = session;
  }

  /**
   * Replays the events of a session.
   *
   * @param session the session as planned
   * @param formats the format of a game of a block, head start included
   * @param events the events in the order in which they reached the server
   * @return where the session stands
   */
  public static SessionProgress of(
      Session session,
      BiFunction<PlannedBlock, PlannedGame, GameFormat> formats,
      List<CourtEvent> events) {
    SessionProgress progress = new SessionProgress(session);
    Map<GameId, GameEntries> entries = new LinkedHashMap<>();
    for (PlannedBlock block : session.plan().blocks()) {
      for (PlannedGame game : block.games()) {
        entries.put(game.id(), new GameEntries(game, formats.apply(block, game)));
      }
    }
    for (JoinedLog.Entry entry : JoinedLog.of(events)) {
      GameEntries own = gameOf(entry.event()).map(entries::get).orElse(null);
      if (own != null) {
        own.take(entry);
      }
      progress.take(entry);
    }
    progress.notes = SessionNotes.of(events);
    entries.forEach((id, own) -> progress.games.put(id, own.result()));
    entries.values().forEach(own -> progress.disputes.addAll(own.disputes()));
    return progress;
  }

  /**
   * The events that count: each id once, in the order of {@link PhoneOrder}, without those that
   * were undone. Entries of a game that wait beside it ({@link Dispute}) are among them.
   *
   * @param events the events in the order in which they reached the server
   * @return those that count
   */
  public static List<CourtEvent> counting(List<CourtEvent> events) {
    return JoinedLog.of(events).stream().map(JoinedLog.Entry::event).toList();
  }

  private static Optional<GameId> gameOf(CourtEvent event) {
    if (event instanceof RallyPlayed played) {
      return Optional.of(played.game());
    } else if (event instanceof FirstServerNamed named) {
      return Optional.of(named.game());
    } else if (event instanceof FinalScoreGiven given) {
      return Optional.of(given.game());
    } else if (event instanceof TimeCalled called) {
      return Optional.of(called.game());
    }
    return Optional.empty();
  }

  private void take(JoinedLog.Entry entry) {
    CourtEvent event = entry.event();
    if (event instanceof BlockStarted started) {
      // A block that a phone began without knowing of a later one does not turn the session back.
      if (newestStart.filter(entry::isBlindTo).isEmpty()) {
        current = Optional.of(started.block());
        newestStart = Optional.of(entry);
      }
      ends.remove(started.block());
      limits.remove(started.block());
      starts.putIfAbsent(started.block(), started.stamp().atMillis());
    } else if (event instanceof BlockEnded finished) {
      ends.put(finished.block(), finished.stamp().atMillis());
      current = current.filter(block -> !block.equals(finished.block()));
    } else if (event instanceof FinalScoreGiven given) {
      results.putIfAbsent(given.game(), given.stamp());
    } else if (event instanceof BlockLimited limited) {
      limits.put(limited.block(), limited);
    } else if (event instanceof YardstickCounted counted) {
      yardsticks
          .computeIfAbsent(counted.block(), block -> new LinkedHashMap<>())
          .put(counted.player(), counted);
    } else if (event instanceof ConditionsNoted noted) {
      conditions = Optional.of(noted.conditions());
    } else if (event instanceof EffortRated rated) {
      efforts.put(rated.player(), rated);
    } else if (event instanceof SessionEnded) {
      ended = true;
    }
  }

  /**
   * The session as planned.
   *
   * @return the session
   */
  public Session session() {
    return session;
  }

  /**
   * All games in the order of the plan.
   *
   * @return the games with their progress
   */
  public List<GameProgress> games() {
    return new ArrayList<>(games.values());
  }

  /**
   * One game.
   *
   * @param game its id
   * @return its progress, or empty where the plan has no such game
   */
  public Optional<GameProgress> game(GameId game) {
    return Optional.ofNullable(games.get(game));
  }

  /**
   * The first entry of a game's result as a whole; a later correction does not move it.
   *
   * @param game its id
   * @return when and by which phone, or empty where there is none
   */
  public Optional<CourtEvent.Stamp> resultOf(GameId game) {
    return Optional.ofNullable(results.get(game));
  }

  /**
   * Games that two phones scored without knowing of each other, and not alike.
   *
   * @return what is in doubt, in the order of the plan
   */
  public List<Dispute> disputes() {
    return List.copyOf(disputes);
  }

  /**
   * The block that is on now.
   *
   * @return its id, or empty before the first and between two
   */
  public Optional<BlockId> current() {
    return current;
  }

  /**
   * The first block that was not started yet.
   *
   * @return the block, or empty where all were
   */
  public Optional<PlannedBlock> next() {
    return session.plan().blocks().stream()
        .filter(block -> !starts.containsKey(block.id()))
        .findFirst();
  }

  /**
   * When a block began.
   *
   * @param block its id
   * @return milliseconds since 1970, or empty where it was not started
   */
  public Optional<Long> startedAt(BlockId block) {
    return Optional.ofNullable(starts.get(block));
  }

  /**
   * When a block ended.
   *
   * @param block its id
   * @return milliseconds since 1970, or empty where it was not ended
   */
  public Optional<Long> endedAt(BlockId block) {
    return Optional.ofNullable(ends.get(block));
  }

  /**
   * The counts of a yardstick block.
   *
   * @param block its id
   * @return the newest count of each player
   */
  public List<YardstickCounted> yardsticks(BlockId block) {
    return List.copyOf(yardsticks.getOrDefault(block, Map.of()).values());
  }

  /**
   * The weather as last noted.
   *
   * @return the conditions, if any were noted
   */
  public Optional<Conditions> conditions() {
    return conditions;
  }

  /**
   * How hard the players felt the session to be.
   *
   * @return the newest rating of each player
   */
  public List<EffortRated> efforts() {
    return List.copyOf(efforts.values());
  }

  /**
   * The notes in words.
   *
   * @return those that stand and those that were taken away
   */
  public SessionNotes notes() {
    return notes;
  }

  /**
   * What was said of the end of a block while it was on.
   *
   * @param block its id
   * @return the newest word, or empty where it ends as planned
   */
  public Optional<BlockLimited> limit(BlockId block) {
    return Optional.ofNullable(limits.get(block));
  }

  /**
   * Whether a game falls away because its block ends sooner.
   *
   * @param block the block
   * @param game one of its games
   * @return true where it is not played any more and nothing was scored in it
   */
  public boolean fallsAway(BlockId block, GameId game) {
    return limit(block).filter(limit -> limit.without().contains(game)).isPresent()
        && game(game).filter(each -> each.status() != GameProgress.Status.NOT_BEGUN).isEmpty();
  }

  /**
   * When a block is to end.
   *
   * @param block a block of the plan
   * @return milliseconds since 1970: the time set while it was on, else the planned minutes after
   *     its start; empty where it was not started
   */
  public Optional<Long> dueAt(PlannedBlock block) {
    Optional<Long> set =
        limit(block.id())
            .filter(limit -> limit.minutesLeft().isPresent())
            .map(
                limit -> limit.stamp().atMillis() + MS_PER_MINUTE * limit.minutesLeft().getAsInt());
    return set.or(
        () ->
            startedAt(block.id())
                .map(start -> start + Math.round(MS_PER_MINUTE * block.time().mean())));
  }

  /**
   * Whether the session was closed.
   *
   * @return true after its last event
   */
  public boolean isEnded() {
    return ended;
  }
}
