package rallywright.engine.plan;

import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.SecondsPrior;
import rallywright.engine.pace.LogNormal;
import rallywright.engine.pace.RallyPace;

/** How fast the rallies of a drill follow one another. */
@FunctionalInterface
public interface DrillPaces {

  /** As the drills themselves say, before any time was recorded. */
  DrillPaces FIRST_IDEAS = (drill, game) -> firstIdea(game);

  /**
   * The pace of a drill.
   *
   * @param drill the drill
   * @param game its game
   * @return seconds per rally with their spread
   */
  RallyPace of(Drill drill, DrillForm.Scored game);

  /**
   * What a change of roles between two games of the same people costs, beyond the usual wait.
   *
   * @return in seconds, 0 or more
   */
  default double roleSeconds() {
    return BlockClock.ROLE_SECONDS;
  }

  private static RallyPace firstIdea(DrillForm.Scored game) {
    return RallyPace.firstIdea(
        logNormal(game.seconds().inPlay()), logNormal(game.seconds().between()));
  }

  private static LogNormal logNormal(SecondsPrior prior) {
    return LogNormal.of(prior.mean(), prior.sd());
  }
}
