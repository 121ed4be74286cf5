package rallywright.web.board;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.web.oncourt.CoachAct;
import rallywright.web.oncourt.OpenSession;

/**
 * What the coach does from the board, as events of the log, so that phones follow and every step
 * leaves a trace. A form says what its board showed; what is no longer so is refused in a sentence.
 */
final class BoardActs {

  private static final String GONE =
      "That block is not on any more, so nothing was changed. The board shows what is on now.";

  private final OpenSession open;
  private final long nowMillis;
  private final Supplier<EventId> ids;

  /**
   * @param open the session as it stands
   * @param nowMillis the time of everything that follows, in milliseconds since 1970
   * @param ids a new id for each event
   */
  BoardActs(OpenSession open, long nowMillis, Supplier<EventId> ids) {
    this.open = open;
    this.nowMillis = nowMillis;
    this.ids = ids;
  }

  private CourtEvent.Stamp stamp() {
    return new CourtEvent.Stamp(ids.get(), open.session().id(), nowMillis, "");
  }

  /** Begins the block that the coach saw as the next one. */
  CoachAct next(String seen) {
    Optional<PlannedBlock> next = open.next().filter(block -> block.id().value().equals(seen));
    if (open.progress().isEnded() || next.isEmpty()) {
      return CoachAct.refused(
          "That block has begun already, or is gone. The board shows what is next.");
    }
    List<CourtEvent> events = new ArrayList<>();
    open.current().ifPresent(on -> events.add(new CourtEvent.BlockEnded(stamp(), on.id())));
    events.add(new CourtEvent.BlockStarted(stamp(), next.get().id()));
    return new CoachAct(
        events, open.title(next.get()) + " has begun; the phones follow." + leftOpen());
  }

  /** Games of the block that is on without a result, in a sentence, or nothing. */
  private String leftOpen() {
    long left =
        open.current().stream()
            .flatMap(block -> open.lanes(block).stream())
            .flatMap(List::stream)
            .filter(game -> !open.isOver(game))
            .count();
    return left == 0
        ? ""
        : left == 1
            ? " 1 game before it has no result yet; it can still be scored."
            : " %d games before it have no result yet; they can still be scored.".formatted(left);
  }

  /** Gives the block that is on so many minutes from now. */
  CoachAct minutesLeft(String seen, int minutes) {
    return seenOn(seen)
        .map(
            block ->
                new CoachAct(
                    List.of(limit(block, OptionalInt.of(minutes), List.of())),
                    "%s ends in %d min; the phones follow.".formatted(open.title(block), minutes)))
        .orElseGet(() -> CoachAct.refused(GONE));
  }

  /** Lets each lane finish the game that it is at; the rest of the block falls away. */
  CoachAct lastGames(String seen) {
    return seenOn(seen).map(this::lastGames).orElseGet(() -> CoachAct.refused(GONE));
  }

  private CoachAct lastGames(PlannedBlock block) {
    Set<GameId> on = new HashSet<>();
    open.gamesOn(block).forEach(game -> on.add(game.id()));
    List<GameId> without =
        block.games().stream()
            .filter(game -> !open.isOver(game) && !on.contains(game.id()))
            .map(PlannedGame::id)
            .toList();
    long fresh =
        without.stream().filter(game -> !open.progress().fallsAway(block.id(), game)).count();
    if (fresh == 0) {
      return CoachAct.refused(
          "No lane has a game behind the one it is at, so nothing falls away. Maybe set the"
              + " minutes.");
    }
    return new CoachAct(
        List.of(limit(block, OptionalInt.empty(), without)),
        "Each lane finishes the game that it is at; %s fall away. The phones follow."
            .formatted(fresh == 1 ? "1 game" : fresh + " games"));
  }

  /** Takes back what was said of the end of the block that is on. */
  CoachAct asPlanned(String seen) {
    Optional<PlannedBlock> block = seenOn(seen);
    Optional<CourtEvent.BlockLimited> limit =
        block.flatMap(each -> open.progress().limit(each.id()));
    if (block.isEmpty() || limit.isEmpty()) {
      return CoachAct.refused(GONE);
    }
    List<CourtEvent> events = new ArrayList<>();
    limitsOf(block.get()).forEach(id -> events.add(new CourtEvent.Undone(stamp(), id)));
    return new CoachAct(events, open.title(block.get()) + " ends as planned again.");
  }

  /** Ends the session for everybody. */
  CoachAct end() {
    if (open.progress().isEnded()) {
      return CoachAct.refused("The session has ended already.");
    }
    return new CoachAct(
        List.of(new CourtEvent.SessionEnded(stamp())),
        "The session has ended; scores can still be corrected.");
  }

  /** Takes the end back: the session goes on. */
  CoachAct goOn() {
    List<CourtEvent> events = new ArrayList<>();
    if (open.progress().isEnded()) {
      for (CourtEvent event : open.events()) {
        if (event instanceof CourtEvent.SessionEnded) {
          events.add(new CourtEvent.Undone(stamp(), event.stamp().id()));
        }
      }
    }
    return events.isEmpty()
        ? CoachAct.refused("The session is not over.")
        : new CoachAct(events, "The session goes on; the next block can begin.");
  }

  private CourtEvent limit(PlannedBlock block, OptionalInt minutes, List<GameId> without) {
    return new CourtEvent.BlockLimited(stamp(), block.id(), minutes, without);
  }

  private List<EventId> limitsOf(PlannedBlock block) {
    return open.events().stream()
        .filter(CourtEvent.BlockLimited.class::isInstance)
        .map(CourtEvent.BlockLimited.class::cast)
        .filter(each -> each.block().equals(block.id()))
        .map(each -> each.stamp().id())
        .toList();
  }

  private Optional<PlannedBlock> seenOn(String seen) {
    return open.progress().isEnded()
        ? Optional.empty()
        : open.current().filter(block -> block.id().value().equals(seen));
  }
}
