package rallywright.engine.point;

import java.util.SplittableRandom;
import rallywright.engine.point.NotedRally.Expectation;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Stage;

/** Draws where a rally ends. */
final class RallyDraws {

  private RallyDraws() {}

  static NotedRally draw(RallyChain truth, Expectation expectation, SplittableRandom random) {
    double left = random.nextDouble();
    for (Stage stage : Stage.values()) {
      for (Winner winner : Winner.values()) {
        left -= truth.endsIn(stage, winner);
        if (left < 0) {
          return new NotedRally(expectation, stage, winner);
        }
      }
    }
    return new NotedRally(expectation, Stage.NET_EXCHANGE, Winner.RECEIVER);
  }
}
