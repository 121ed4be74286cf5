package rallywright.engine.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.Finish;
import rallywright.engine.session.CourtEvent.FirstServerNamed;
import rallywright.engine.session.CourtEvent.RallyPlayed;
import rallywright.engine.session.CourtEvent.TimeCalled;
import rallywright.engine.session.GameProgress.Status;

/** Replays the events of one game. A final score replaces what was scored before it. */
final class GameFold {

  private final PlannedGame game;
  private final GameFormat format;
  private final List<Rally> rallies = new ArrayList<>();
  private final List<Long> times = new ArrayList<>();
  private final List<String> phones = new ArrayList<>();
  private @Nullable Side firstServer;
  private @Nullable FinalScoreGiven last;
  private boolean clockEnded;
  private @Nullable EventId newest;
  private @Nullable Long startedAt;

  GameFold(PlannedGame game, GameFormat format) {
    this.game = game;
    this.format = format;
  }

  /** Takes the next event of this game that counts. */
  void take(CourtEvent event) {
    if (event instanceof RallyPlayed played) {
      takeRally(played);
    } else if (event instanceof FirstServerNamed named) {
      firstServer = named.server();
      note(event);
    } else if (event instanceof FinalScoreGiven given) {
      last = given;
      note(event);
    } else if (event instanceof TimeCalled) {
      clockEnded = true;
      note(event);
    }
  }

  private void takeRally(RallyPlayed played) {
    boolean over = last != null || clockEnded || replay().isOver();
    if (!over) {
      rallies.add(played.rally());
      times.add(played.stamp().atMillis());
      phones.add(played.stamp().by());
      note(played);
    }
  }

  private void note(CourtEvent event) {
    newest = event.stamp().id();
    if (startedAt == null) {
      startedAt = event.stamp().atMillis();
    }
  }

  GameProgress result() {
    GameState replayed = replay();
    FinalScoreGiven given = last;
    boolean logAgrees = given == null || given.score().equals(replayed.score());
    Score score = given == null ? replayed.score() : given.score();
    return new GameProgress(
        game,
        playedFormat(),
        status(replayed),
        score,
        logAgrees ? rallies : List.of(),
        logAgrees ? Optional.of(replayed) : Optional.empty(),
        Optional.ofNullable(firstServer),
        Optional.ofNullable(newest),
        logAgrees ? times : List.of(),
        logAgrees ? phones : List.of(),
        startedAt == null ? OptionalLong.empty() : OptionalLong.of(startedAt));
  }

  private Status status(GameState replayed) {
    if (last != null) {
      return last.finish() == Finish.PLAYED_OUT ? Status.PLAYED_OUT : Status.TIME_CALLED;
    }
    if (replayed.isOver()) {
      return Status.PLAYED_OUT;
    }
    if (clockEnded) {
      return Status.TIME_CALLED;
    }
    return newest == null ? Status.NOT_BEGUN : Status.RUNNING;
  }

  private GameState replay() {
    GameState state = GameState.start(playedFormat());
    for (Rally rally : rallies) {
      // A first server named late can end the game earlier than the rallies were seen to.
      if (!state.isOver()) {
        state = state.after(rally);
      }
    }
    return state;
  }

  private GameFormat playedFormat() {
    return firstServer == null ? format : format.withFirstServer(firstServer);
  }
}
