package rallywright.engine.simulation;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.Serving;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.point.FirstStages;
import rallywright.engine.point.PointStages;
import rallywright.engine.point.RallyChain;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Side;

/**
 * In which stage the rallies of a game end: drawn, once it is known who won, from the chain of a
 * point between the players' true skills. Games that begin with a feed have no stages.
 */
final class TrueStages {

  private final Map<Side, RallyChain> chains = new EnumMap<>(Side.class);

  private TrueStages() {}

  static TrueStages of(TrueSkills skills, DrillForm.Scored scored, PlannedGame game) {
    TrueStages stages = new TrueStages();
    if (scored.serving() != Serving.FEED) {
      PointStages contests =
          game.a().players().size() > 1 ? FirstStages.DOUBLES : FirstStages.HALF_COURT;
      for (Side server : Side.values()) {
        Seat serving = server == Side.A ? game.a() : game.b();
        Seat receiving = server == Side.A ? game.b() : game.a();
        stages.chains.put(
            server,
            RallyChain.between(
                contests, skills.profile(serving.players()), skills.profile(receiving.players())));
      }
    }
    return stages;
  }

  /** The stage in which a rally ended; empty where the game has none. */
  Optional<Stage> drawn(Side server, Side winner, RandomGenerator random) {
    RallyChain chain = chains.get(server);
    if (chain == null) {
      return Optional.empty();
    }
    Winner won = winner == server ? Winner.SERVER : Winner.RECEIVER;
    double all = won == Winner.SERVER ? chain.serverWins() : 1 - chain.serverWins();
    double left = random.nextDouble() * all;
    for (Stage stage : Stage.values()) {
      left -= chain.endsIn(stage, won);
      if (left < 0) {
        return Optional.of(stage);
      }
    }
    return Optional.of(Stage.NET_EXCHANGE);
  }
}
