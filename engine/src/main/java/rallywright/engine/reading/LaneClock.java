package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.Scoring;
import rallywright.engine.session.CourtEvent.Stamp;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionProgress;

/**
 * What the entries of one lane in one block tell of its times.
 *
 * <p>A tap ends a rally; from tap to tap there is one wait and one rally. A tap within {@value
 * #SHORTEST_SECONDS} s of the one before it was late for its own or early for the next: the rallies
 * around it are taken together. More than {@value #LONGEST_SECONDS} s for a rally is a break and
 * tells nothing (both limits: assumptions of this project). From the last ball of a game to the
 * first tap of the next game of the same people there are the change, one wait and one rally.
 *
 * <p>Between two games a lane may wait for the others. So what lies between them counts only on the
 * lane whose game of that turn ended last: whoever ended last waited for nobody.
 *
 * <p>Games with a result alone tell a span from the result before to their own, where the same
 * people played on in other roles. Where results of a lane came too quickly to be played, somebody
 * entered them together, and none of them tells a time. Times of two phones are compared only to
 * see which lane was last, and what the desk typed is no time of play.
 */
final class LaneClock {

  static final double SHORTEST_SECONDS = 3;
  static final double LONGEST_SECONDS = 120;

  private final List<RallySpan> tapped = new ArrayList<>();
  private final List<RallySpan> results = new ArrayList<>();
  private final List<Double> changes = new ArrayList<>();
  private boolean enteredTogether;

  private LaneClock() {}

  /**
   * A game of the lane.
   *
   * @param progress how it went
   * @param result the first entry of its result, if it was entered as a whole
   */
  record Entered(GameProgress progress, Optional<Stamp> result) {

    static Entered of(SessionProgress session, GameProgress progress) {
      return new Entered(progress, session.resultOf(progress.game().id()));
    }

    private boolean isTapped() {
      return !progress.rallyTimes().isEmpty();
    }

    private Set<PlayerId> players() {
      Set<PlayerId> players = new HashSet<>(progress.game().a().players());
      players.addAll(progress.game().b().players());
      return players;
    }

    private boolean endedLast(Map<Integer, Long> lastEnds) {
      Long last = lastEnds.get(progress.game().turn());
      return last != null && endMillis().filter(last::equals).isPresent();
    }

    private int points() {
      return progress.score().total() - progress.format().start().total();
    }

    /** When it ended, in milliseconds since 1970; empty where no phone saw it. */
    Optional<Long> endMillis() {
      return end().filter(mark -> !mark.phone().isEmpty()).map(Mark::millis);
    }

    /** The end of its last ball, as seen by a phone. */
    private Optional<Mark> end() {
      if (isTapped()) {
        int last = progress.rallyTimes().size() - 1;
        return Optional.of(
            new Mark(progress.rallyTimes().get(last), progress.rallyPhones().get(last)));
      }
      return result.map(stamp -> new Mark(stamp.atMillis(), stamp.by()));
    }

    private Mark firstTap() {
      return new Mark(progress.rallyTimes().get(0), progress.rallyPhones().get(0));
    }
  }

  /** A moment on the clock of one phone; the desk has no name. */
  private record Mark(long millis, String phone) {

    /** Seconds until a later mark of the same phone; empty where the two cannot be compared. */
    Optional<Double> until(Mark later) {
      double seconds = (later.millis - millis) / 1000.0;
      return phone.isEmpty() || !phone.equals(later.phone) || seconds < 0
          ? Optional.empty()
          : Optional.of(seconds);
    }
  }

  /**
   * Reads a lane.
   *
   * @param games its games in order; empty where one tells nothing
   * @param lastEnds for each turn when its last lane ended; a turn of which that is not known is
   *     missing
   */
  static LaneClock of(List<Optional<Entered>> games, Map<Integer, Long> lastEnds) {
    LaneClock clock = new LaneClock();
    Optional<Entered> before = Optional.empty();
    for (Optional<Entered> game : games) {
      if (game.isPresent()) {
        clock.take(before.filter(each -> each.endedLast(lastEnds)), game.get());
      }
      before = game;
    }
    return clock;
  }

  private void take(Optional<Entered> before, Entered game) {
    Optional<Entered> same = before.filter(each -> each.players().equals(game.players()));
    if (game.isTapped()) {
      takeTaps(game.progress());
      same.filter(Entered::isTapped)
          .flatMap(Entered::end)
          .flatMap(end -> end.until(game.firstTap()))
          .filter(seconds -> seconds >= SHORTEST_SECONDS && seconds <= LONGEST_SECONDS)
          .ifPresent(changes::add);
    } else if (game.points() > 0 && game.progress().format().scoring() == Scoring.EVERY_RALLY) {
      same.flatMap(Entered::end)
          .flatMap(start -> game.end().flatMap(start::until))
          .ifPresent(seconds -> takeResult(game.points(), seconds));
    }
  }

  private void takeResult(int points, double seconds) {
    if (seconds < SHORTEST_SECONDS * points) {
      enteredTogether = true;
    } else {
      results.add(new RallySpan(points, seconds));
    }
  }

  private void takeTaps(GameProgress game) {
    List<RallySpan> spans = new ArrayList<>();
    for (int i = 1; i < game.rallyTimes().size(); i++) {
      Mark from = new Mark(game.rallyTimes().get(i - 1), game.rallyPhones().get(i - 1));
      Mark to = new Mark(game.rallyTimes().get(i), game.rallyPhones().get(i));
      Optional<Double> seconds = from.until(to);
      if (seconds.isEmpty()) {
        keep(spans);
      } else if (seconds.get() >= SHORTEST_SECONDS) {
        spans.add(new RallySpan(1, seconds.get()));
      } else if (!spans.isEmpty()) {
        RallySpan last = spans.remove(spans.size() - 1);
        spans.add(last.then(new RallySpan(1, seconds.get())));
      }
    }
    keep(spans);
  }

  private void keep(List<RallySpan> spans) {
    spans.stream().filter(span -> span.perRally() <= LONGEST_SECONDS).forEach(tapped::add);
    spans.clear();
  }

  /** Rallies that were tapped one by one. */
  List<RallySpan> tapped() {
    return tapped;
  }

  /** Whole games by their results, the change before them included. */
  List<RallySpan> results() {
    return enteredTogether
        ? List.of()
        : results.stream().filter(span -> span.perRally() <= LONGEST_SECONDS).toList();
  }

  /** Seconds from the last ball of a game to the first tap of the next. */
  List<Double> changes() {
    return changes;
  }

  /** The games of a lane in order, each with what was entered, if it tells something. */
  static List<Optional<Entered>> entered(
      SessionProgress session, List<PlannedGame> games, Set<GameProgress> readable) {
    return games.stream()
        .map(game -> session.game(game.id()).filter(readable::contains))
        .map(game -> game.map(progress -> Entered.of(session, progress)))
        .toList();
  }
}
