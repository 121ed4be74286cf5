package rallywright.catalogue;

import java.util.List;
import rallywright.engine.drill.Serving;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.WinBy;

/** Reads how a game is counted. */
final class GameReader {

  private GameReader() {}

  /** The format of a game and where its players stand. */
  record Counting(GameFormat format, Serving serving) {}

  /** The ways of counting that fit two players on half a court. */
  enum TwoPlayerScoring {
    /** Every rally scores. */
    EVERY_RALLY(Scoring.EVERY_RALLY),
    /** Only the serving side scores. */
    ONLY_THE_SERVER(Scoring.SIDE_OUT_ONE_SERVER);

    private final Scoring scoring;

    TwoPlayerScoring(Scoring scoring) {
      this.scoring = scoring;
    }
  }

  static Counting counting(Entry entry) {
    Block block = Block.of(entry, List.of("scoring", "target", "win-by", "serving"), List.of());
    Scoring scoring = block.get("scoring").choice(TwoPlayerScoring.class).scoring;
    WinBy winBy = winBy(block.get("win-by"));
    Entry target = block.get("target");
    Goal goal = target.make(() -> Goal.firstTo(target.whole()).withWinBy(winBy));
    Serving serving = block.get("serving").choice(Serving.class);
    GameFormat format = entry.make(() -> GameFormat.DRILL_GAME.withScoring(scoring).withGoal(goal));
    return new Counting(format, serving);
  }

  private static WinBy winBy(Entry entry) {
    return switch (entry.whole()) {
      case 1 -> WinBy.ONE;
      case 2 -> WinBy.TWO;
      default ->
          throw entry.problem(
              "\"win-by\" is %d, but must be 1 or 2. Maybe 1.".formatted(entry.whole()));
    };
  }
}
