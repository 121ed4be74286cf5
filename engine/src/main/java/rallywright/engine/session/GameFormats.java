package rallywright.engine.session;

import java.util.Optional;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Role;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/** How a planned game is counted: by its drill, on its lane, with its head start. */
public final class GameFormats {

  private GameFormats() {}

  /**
   * The format of a planned game. The side whose role is to serve serves first, unless somebody
   * names another first server on court.
   *
   * @param drill the drill of the block; empty where it is not known any more: then a drill game
   *     counts to 5 and a full game as the usual half-court game
   * @param block the block
   * @param game the game
   * @return the format, head start included
   */
  public static GameFormat of(Optional<Drill> drill, PlannedBlock block, PlannedGame game) {
    GameFormat format =
        drill
            .flatMap(Drill::scored)
            .map(scored -> scored.formatOn(game.place().lane()))
            .orElse(
                block.kind() == PlannedBlock.Kind.FULL_GAME
                    ? GameFormat.HALF_COURT_GAME
                    : GameFormat.DRILL_GAME);
    Side first = game.b().role() == Role.SERVER ? Side.B : format.firstServer();
    return format
        .withFirstServer(first)
        .withStart(Score.of(game.headStart().a(), game.headStart().b()));
  }
}
