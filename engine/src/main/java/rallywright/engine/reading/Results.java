package rallywright.engine.reading;

import java.util.Optional;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.session.GameProgress;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.RalliesByServer;
import rallywright.engine.skill.RalliesWon;
import rallywright.engine.skill.Result;
import rallywright.engine.skill.ScorePath;

/** What a game that was played tells the skill model. */
final class Results {

  private Results() {}

  /**
   * The result of a game, or empty where its way of counting is not one that the model reads from a
   * final score (games with two servers a side without a rally log).
   */
  static Optional<Result> of(GameProgress game, Fixture fixture) {
    if (fixture.contest().roles() == Contest.Roles.BY_SIDE) {
      return Optional.of(
          RalliesWon.between(fixture.turned(game.format().start()), fixture.turned(game.score())));
    }
    if (game.state().isPresent() && !game.rallies().isEmpty()) {
      return Optional.of(byServer(game));
    }
    return path(game);
  }

  private static Result byServer(GameProgress game) {
    int[] served = new int[2];
    int[] won = new int[2];
    GameState state = GameState.start(game.format());
    for (Rally rally : game.rallies()) {
      if (!state.isOver()) {
        Side server = state.serve().side();
        served[server == Side.A ? 0 : 1]++;
        won[server == Side.A ? 0 : 1] += rally.winner() == server ? 1 : 0;
        state = state.after(rally);
      }
    }
    return new RalliesByServer(served[0], won[0], served[1], won[1]);
  }

  private static Optional<Result> path(GameProgress game) {
    GameFormat format = game.format();
    boolean finished = game.status() == GameProgress.Status.PLAYED_OUT;
    ScorePath.Counting counting;
    switch (format.scoring()) {
      case SIDE_OUT_ONE_SERVER -> counting = ScorePath.Counting.SERVER_ONLY;
      case EVERY_RALLY, RALLY_2026 -> counting = ScorePath.Counting.EVERY_RALLY;
      default -> {
        return Optional.empty();
      }
    }
    Score start = format.start();
    return Optional.of(
        new ScorePath(
            counting,
            start,
            game.score(),
            format.goal(),
            finished ? ScorePath.Ending.FINISHED : ScorePath.Ending.TIME_CALLED,
            format.firstServer() == Side.A ? ScorePath.FirstServer.A : ScorePath.FirstServer.B));
  }
}
