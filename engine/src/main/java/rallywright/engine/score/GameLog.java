package rallywright.engine.score;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import rallywright.engine.score.GameEvent.RallyPlayed;
import rallywright.engine.score.GameEvent.ResultEntered;
import rallywright.engine.score.GameEvent.TimeCalled;
import rallywright.engine.score.GameEvent.Undone;
import rallywright.engine.score.ScoreRefusal.Reason;

/**
 * The events of one game in their order, never changed, only added to; the game is their fold.
 *
 * <p>An event that cannot apply (a rally after the end, as two phones may send it) changes nothing,
 * so a fold never fails. An undo takes back the last event that counted.
 *
 * @param format how the game is counted
 * @param events what was noted, oldest first
 */
public record GameLog(GameFormat format, List<GameEvent> events) {

  /** Keeps its own copy of the events. */
  public GameLog {
    events = List.copyOf(events);
  }

  /** What became of an event that was offered. */
  public sealed interface Answer {

    /**
     * The event counts.
     *
     * @param log the log with the event
     */
    record Accepted(GameLog log) implements Answer {}

    /**
     * The event cannot apply; the log stays as it was.
     *
     * @param refusal why
     */
    record Refused(ScoreRefusal refusal) implements Answer {}
  }

  /**
   * A rally with the serve that it began with.
   *
   * @param serve who served it
   * @param rally who won it
   */
  public record ServedRally(Serve serve, Rally rally) {}

  /**
   * A game of which nothing was noted yet.
   *
   * @param format how the game is counted
   * @return the empty log
   */
  public static GameLog start(GameFormat format) {
    return new GameLog(format, List.of());
  }

  /**
   * The log with one event more, or why it cannot be.
   *
   * @param event what happened
   * @return the new log or the refusal
   */
  public Answer offer(GameEvent event) {
    Optional<ScoreRefusal> refusal = refusalOf(event, fold());
    if (refusal.isPresent()) {
      return new Answer.Refused(refusal.get());
    }
    List<GameEvent> longer = new ArrayList<>(events);
    longer.add(event);
    return new Answer.Accepted(new GameLog(format, longer));
  }

  /**
   * The log with one event more.
   *
   * @param event what happened
   * @return the new log
   * @throws IllegalStateException if the event cannot apply; {@link #offer} answers with the reason
   */
  public GameLog with(GameEvent event) {
    if (offer(event) instanceof Answer.Accepted accepted) {
      return accepted.log();
    }
    throw new IllegalStateException(
        "The event (%s) must be one that can apply now. Maybe ask by offer first."
            .formatted(event));
  }

  /**
   * The log with the last event that counted taken back.
   *
   * @return the new log
   * @throws IllegalStateException if nothing is left to take back
   */
  public GameLog undo() {
    return with(new Undone());
  }

  /**
   * The game as it stands.
   *
   * @return the state after all events
   */
  public GameState state() {
    return fold().getLast().state();
  }

  /**
   * All states of the game from its start, what was undone left out.
   *
   * @return the states, oldest first, at least one
   */
  public List<GameState> states() {
    return fold().stream().map(Step::state).toList();
  }

  /**
   * The rallies that count, each with its server: evidence for the model.
   *
   * @return the rallies, oldest first; empty once a result was entered as a whole, since the
   *     rallies then need not add up to it
   */
  public List<ServedRally> rallies() {
    List<ServedRally> served = new ArrayList<>();
    GameState before = GameState.start(format);
    for (Step step : fold()) {
      if (step.event().orElse(null) instanceof RallyPlayed played) {
        served.add(new ServedRally(before.serve(), played.rally()));
      } else if (step.event().orElse(null) instanceof ResultEntered) {
        return List.of();
      }
      before = step.state();
    }
    return List.copyOf(served);
  }

  private record Step(Optional<GameEvent> event, GameState state) {}

  private Deque<Step> fold() {
    Deque<Step> steps = new ArrayDeque<>();
    steps.addLast(new Step(Optional.empty(), GameState.start(format)));
    for (GameEvent event : events) {
      if (refusalOf(event, steps).isPresent()) {
        continue;
      }
      if (event instanceof Undone) {
        steps.removeLast();
      } else {
        steps.addLast(new Step(Optional.of(event), next(steps.getLast().state(), event)));
      }
    }
    return steps;
  }

  private static GameState next(GameState state, GameEvent event) {
    if (event instanceof RallyPlayed played) {
      return state.after(played.rally());
    }
    if (event instanceof ResultEntered entered) {
      return state.withResult(entered.score(), entered.clock());
    }
    return state.timeCalled();
  }

  private Optional<ScoreRefusal> refusalOf(GameEvent event, Deque<Step> steps) {
    if (event instanceof Undone) {
      return steps.size() > 1
          ? Optional.empty()
          : Optional.of(
              new ScoreRefusal(
                  Reason.NOTHING_TO_UNDO,
                  "The game (no event yet) must have an event to take back. Maybe it is another"
                      + " game."));
    }
    if (event instanceof ResultEntered entered) {
      return FinalScoreCheck.of(format).refusalOf(entered.score(), entered.clock());
    }
    GameState now = steps.getLast().state();
    if (now.isOver()) {
      String what = event instanceof TimeCalled ? "call time" : "play on";
      return Optional.of(
          new ScoreRefusal(
              Reason.GAME_OVER,
              "The game (%s) must still go on to %s. Maybe undo the last rally."
                  .formatted(now.score(), what)));
    }
    return Optional.empty();
  }
}
