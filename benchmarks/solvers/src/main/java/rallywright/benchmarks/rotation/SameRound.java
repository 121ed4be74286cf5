package rallywright.benchmarks.rotation;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.common.decorator.SelectionFilter;
import ai.timefold.solver.core.impl.heuristic.selector.move.generic.SwapMove;

/** Only seats of the same round swap, so that nobody stands twice in a round. */
public final class SameRound implements SelectionFilter<Tables, SwapMove<Tables>> {

  @Override
  public boolean accept(ScoreDirector<Tables> director, SwapMove<Tables> move) {
    return ((Seat) move.getLeftEntity()).round() == ((Seat) move.getRightEntity()).round();
  }
}
