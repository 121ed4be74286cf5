package rallywright.engine.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Serve;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.JoinedLog.Entry;

/**
 * What several phones noted of one game.
 *
 * <p>An entry follows on what its phone knew. One that was made without knowing of another phone's
 * entry, which reached the server first, waits beside the game: mostly both saw the same rally, and
 * counting it twice would be wrong. A result given without knowing of rallies counts all the same
 * if they could have led to it. Where the waiting entries lead to a score that the game has passed
 * through, nothing is in doubt; otherwise there is a {@link Dispute}.
 */
final class GameEntries {

  private final PlannedGame game;
  private final GameFormat format;
  private final List<Entry> counting = new ArrayList<>();
  private final Map<String, List<Entry>> waiting = new LinkedHashMap<>();

  GameEntries(PlannedGame game, GameFormat format) {
    this.game = game;
    this.format = format;
  }

  /** Takes the next entry of this game. */
  void take(Entry entry) {
    boolean blind = counting.stream().anyMatch(entry::isBlindTo);
    if (!blind || isReached(entry.event())) {
      counting.add(entry);
    } else {
      waiting.computeIfAbsent(entry.event().stamp().by(), by -> new ArrayList<>()).add(entry);
    }
  }

  /** Whether the game as it stands can go on to a result. */
  private boolean isReached(CourtEvent event) {
    if (!(event instanceof FinalScoreGiven given)) {
      return false;
    }
    GameProgress now = fold(counting);
    return !now.isOver() && isWithin(now.score(), given.score());
  }

  private static boolean isWithin(Score less, Score more) {
    return less.a() <= more.a() && less.b() <= more.b();
  }

  GameProgress result() {
    return fold(counting);
  }

  private GameProgress fold(List<Entry> entries) {
    GameFold fold = new GameFold(game, format);
    entries.forEach(entry -> fold.take(entry.event()));
    return fold.result();
  }

  /** What is in doubt, phone by phone. */
  List<Dispute> disputes() {
    List<Dispute> disputes = new ArrayList<>();
    waiting.forEach((phone, own) -> dispute(phone, own).ifPresent(disputes::add));
    return disputes;
  }

  private Optional<Dispute> dispute(String phone, List<Entry> own) {
    GameProgress shown = fold(asSeenBy(phone, own));
    if (isPassed(shown)) {
      return Optional.empty();
    }
    List<EventId> standing =
        counting.stream()
            .filter(entry -> own.stream().anyMatch(each -> each.isBlindTo(entry)))
            .map(GameEntries::id)
            .toList();
    List<EventId> ids = own.stream().map(GameEntries::id).toList();
    return Optional.of(new Dispute(game.id(), phone, shown.score(), shown.isOver(), ids, standing));
  }

  /** The entries from which a phone read its score when it made its last one that waits. */
  private List<Entry> asSeenBy(String phone, List<Entry> own) {
    Entry last = own.get(own.size() - 1);
    long seen = last.event().stamp().order().seen();
    List<Entry> all = new ArrayList<>(counting);
    all.addAll(own);
    return all.stream()
        .filter(entry -> entry.place() <= last.place())
        .filter(entry -> entry.event().stamp().by().equals(phone) || entry.place() < seen)
        .sorted(java.util.Comparator.comparingInt(Entry::place))
        .toList();
  }

  /** Whether the game has passed through what a phone shows, or could have. */
  private boolean isPassed(GameProgress shown) {
    GameProgress now = fold(counting);
    if (shown.firstServer().isPresent() && !shown.firstServer().equals(now.firstServer())) {
      return false;
    }
    if (shown.isOver()) {
      return now.isOver() && now.score().equals(shown.score());
    }
    if (now.isOver() && now.state().isEmpty() && isWithin(shown.score(), now.score())) {
      return true;
    }
    return IntStream.rangeClosed(0, counting.size())
        .mapToObj(length -> fold(counting.subList(0, length)))
        .anyMatch(passed -> isSame(passed, shown));
  }

  /** Whether two standings are one; where the serve decides who scores, it belongs to them. */
  private boolean isSame(GameProgress one, GameProgress other) {
    if (!one.score().equals(other.score())) {
      return false;
    }
    if (format.scoring() == Scoring.EVERY_RALLY || one.state().isEmpty()) {
      return true;
    }
    Serve serve = one.state().get().serve();
    return other
        .state()
        .map(GameState::serve)
        .filter(their -> their.side() != serve.side() || their.number() != serve.number())
        .isEmpty();
  }

  private static EventId id(Entry entry) {
    return entry.event().stamp().id();
  }
}
