package rallywright.web.board;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionProgress;
import rallywright.paper.FirstNames;
import rallywright.web.oncourt.OpenSession;

/**
 * A session as its board shows it.
 *
 * @param title the block that is played, or what stands before the first and after the last
 * @param clock how long it has been played and how the session stands beside its plan; may be empty
 * @param limit what was said of its end while it was on, and whether it can be taken back; or empty
 * @param lanes every lane of the block
 * @param counts what was counted of a test so far
 * @param waiting who plays in no game of the present turns, with commas; or empty
 * @param next what the button for the next block says; empty where none follows
 * @param nextBlock the id of the block that it begins
 * @param block the id of the block that is on, or empty
 * @param state how far the session is
 */
public record BoardView(
    String title,
    String clock,
    String limit,
    List<LaneLine> lanes,
    List<String> counts,
    String waiting,
    String next,
    String nextBlock,
    String block,
    State state) {

  private static final double MS_PER_MINUTE = 60_000;

  /** Less than this is no difference to speak of: an assumption of this project. */
  private static final double ON_TIME_MINUTES = 1.5;

  /** A session this far from its plan is played at another time: an assumption of this project. */
  private static final double OTHER_TIME_MINUTES = 120;

  /** How far a session is. */
  public enum State {
    /** Nothing was begun. */
    BEFORE,
    /** A block is played, or between two. */
    RUNNING,
    /** It was ended. */
    ENDED
  }

  /**
   * One lane.
   *
   * @param where court and lane
   * @param a side A with its role
   * @param b side B with its role
   * @param score the score of the present game, or empty before it
   * @param progress which game of how many, and how it stands
   */
  public record LaneLine(String where, String a, String b, String score, String progress) {}

  static BoardView of(OpenSession open, Instant now) {
    SessionProgress progress = open.progress();
    Optional<PlannedBlock> current = progress.isEnded() ? Optional.empty() : open.current();
    Optional<PlannedBlock> next = progress.isEnded() ? Optional.empty() : open.next();
    return new BoardView(
        title(open, current),
        clock(open, current, now),
        current.map(block -> limit(open, block, now)).orElse(""),
        current.map(block -> lanes(open, block)).orElse(List.of()),
        current.map(block -> counts(open, block)).orElse(List.of()),
        current.map(block -> waiting(open, block)).orElse(""),
        next.map(block -> (current.isEmpty() ? "Begin: " : "On to: ") + numbered(open, block))
            .orElse(""),
        next.map(block -> block.id().value()).orElse(""),
        current.map(block -> block.id().value()).orElse(""),
        state(progress));
  }

  /** Who takes part: id and name. */
  static Map<String, String> people(OpenSession open) {
    Map<String, String> people = new LinkedHashMap<>();
    open.plan().present().forEach(id -> people.put(id.value(), open.names().of(id)));
    return people;
  }

  private static String limit(OpenSession open, PlannedBlock block, Instant now) {
    Optional<CourtEvent.BlockLimited> limit = open.progress().limit(block.id());
    if (limit.isEmpty()) {
      return "";
    }
    if (limit.get().minutesLeft().isEmpty()) {
      return "The games that are on are the last of this block.";
    }
    long left = minutesUntilEnd(open, block, now);
    return left > 0 ? "This block ends in %d min.".formatted(left) : "The time is over.";
  }

  /** Rounded up, so that it says 1 until the time is over. */
  private static long minutesUntilEnd(OpenSession open, PlannedBlock block, Instant now) {
    long due = open.progress().dueAt(block).orElse(now.toEpochMilli());
    return (long) Math.ceil((due - now.toEpochMilli()) / MS_PER_MINUTE);
  }

  private static State state(SessionProgress progress) {
    boolean begun =
        progress.session().plan().blocks().stream()
            .anyMatch(block -> progress.startedAt(block.id()).isPresent());
    return progress.isEnded() ? State.ENDED : begun ? State.RUNNING : State.BEFORE;
  }

  private static String title(OpenSession open, Optional<PlannedBlock> current) {
    if (open.progress().isEnded()) {
      return "The session has ended";
    }
    return current
        .map(block -> numbered(open, block))
        .orElse(state(open.progress()) == State.BEFORE ? "Not begun yet" : "Between two blocks");
  }

  /** Two blocks can have the same drill, in other directions. */
  private static String numbered(OpenSession open, PlannedBlock block) {
    return open.plan().blocks().indexOf(block) + 1 + ". " + open.title(block);
  }

  /** Minutes in the block, and the clock of the whole session beside the plan's usual times. */
  private static String clock(OpenSession open, Optional<PlannedBlock> current, Instant now) {
    if (current.isEmpty()) {
      return "";
    }
    PlannedBlock block = current.get();
    long started = open.progress().startedAt(block.id()).orElse(now.toEpochMilli());
    double inBlock = Math.max(0, (now.toEpochMilli() - started) / MS_PER_MINUTE);
    double before = 0;
    for (PlannedBlock each : open.plan().blocks()) {
      if (each.id().equals(block.id())) {
        break;
      }
      before += each.time().mean();
    }
    LocalDateTime planned =
        open.session().date().atTime(open.session().start()).plusSeconds(Math.round(60 * before));
    double whole =
        open.progress().dueAt(block).map(due -> (due - started) / MS_PER_MINUTE).orElse(inBlock);
    double late =
        (started - planned.atZone(ZoneId.systemDefault()).toInstant().toEpochMilli())
                / MS_PER_MINUTE
            + Math.max(inBlock, whole)
            - block.time().mean();
    return "%d min of about %d%s".formatted(Math.round(inBlock), Math.round(whole), beside(late));
  }

  /** A session that is played hours from its plan says nothing of the clock. */
  private static String beside(double late) {
    if (Math.abs(late) > OTHER_TIME_MINUTES) {
      return "";
    }
    if (Math.abs(late) < ON_TIME_MINUTES) {
      return ", on time";
    }
    return ", %d min %s the plan"
        .formatted(Math.round(Math.abs(late)), late > 0 ? "behind" : "ahead of");
  }

  private static List<LaneLine> lanes(OpenSession open, PlannedBlock block) {
    return open.lanes(block).stream().map(games -> line(open, games)).toList();
  }

  /** The game that is played on a lane: the first that is not over, else the last. */
  private static PlannedGame present(OpenSession open, List<PlannedGame> games) {
    return games.stream()
        .filter(game -> !open.isOver(game))
        .findFirst()
        .orElse(games.get(games.size() - 1));
  }

  private static Optional<GameProgress> progress(OpenSession open, PlannedGame game) {
    return open.progress().game(game.id());
  }

  private static LaneLine line(OpenSession open, List<PlannedGame> games) {
    PlannedGame game = present(open, games);
    FirstNames names = open.names();
    Optional<GameProgress> progress = progress(open, game);
    boolean begun =
        progress.filter(each -> each.status() != GameProgress.Status.NOT_BEGUN).isPresent();
    boolean done = open.isOver(game);
    boolean disputed =
        open.progress().disputes().stream().anyMatch(each -> each.game().equals(game.id()));
    String standing =
        disputed ? "two phones differ" : done ? "all done" : begun ? "playing" : "not begun";
    return new LaneLine(
        game.place().words(),
        seat(names, game.a()),
        seat(names, game.b()),
        begun ? progress.map(each -> each.score().a() + "–" + each.score().b()).orElse("") : "",
        "Game %d of %d, %s".formatted(games.indexOf(game) + 1, games.size(), standing));
  }

  private static String seat(FirstNames names, Seat seat) {
    String who = names.listed(seat.players());
    String role = seat.role().words();
    return role.equals("even") ? who : who + " (" + role + ")";
  }

  private static List<String> counts(OpenSession open, PlannedBlock block) {
    return open.progress().yardsticks(block.id()).stream()
        .map(
            count ->
                "%s: %d of %d"
                    .formatted(open.names().of(count.player()), count.hits(), count.balls()))
        .toList();
  }

  private static String waiting(OpenSession open, PlannedBlock block) {
    if (block.games().isEmpty()) {
      return "";
    }
    Set<PlayerId> busy = new HashSet<>();
    for (PlannedGame game : open.gamesOn(block)) {
      busy.addAll(game.a().players());
      busy.addAll(game.b().players());
    }
    return open.names()
        .listed(open.plan().present().stream().filter(each -> !busy.contains(each)).toList());
  }
}
