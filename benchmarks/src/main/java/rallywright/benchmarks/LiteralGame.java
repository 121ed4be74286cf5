package rallywright.benchmarks;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/** A game as the chain of its literal states, solved densely by Apache Commons Math. */
final class LiteralGame {

  private final List<GameState> states = new ArrayList<>();
  private final Map<GameState, Integer> places = new HashMap<>();

  LiteralGame(GameFormat format) {
    Deque<GameState> open = new ArrayDeque<>();
    add(GameState.start(format), open);
    while (!open.isEmpty()) {
      GameState state = open.removeFirst();
      for (Side winner : Side.values()) {
        GameState next = next(state, winner);
        if (!next.isOver()) {
          add(next, open);
        }
      }
    }
  }

  int states() {
    return states.size();
  }

  /** The chance that side A wins, and the mean number of rallies. */
  double[] solve(RallyChances chances) {
    int size = states.size();
    Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(size, size);
    RealVector wins = new ArrayRealVector(size);
    for (int i = 0; i < size; i++) {
      matrix.addToEntry(i, i, 1);
      for (Side winner : Side.values()) {
        GameState next = next(states.get(i), winner);
        double chance = chance(states.get(i), winner, chances);
        Integer place = places.get(next);
        if (place != null) {
          matrix.addToEntry(i, place, -chance);
        } else if (next.winner().orElseThrow() == Side.A) {
          wins.addToEntry(i, chance);
        }
      }
    }
    DecompositionSolver solver = new LUDecomposition(matrix).getSolver();
    double winA = solver.solve(wins).getEntry(0);
    double mean = solver.solve(new ArrayRealVector(size, 1)).getEntry(0);
    return new double[] {winA, mean};
  }

  private void add(GameState state, Deque<GameState> open) {
    if (!places.containsKey(state)) {
      places.put(state, states.size());
      states.add(state);
      open.add(state);
    }
  }

  private static double chance(GameState state, Side winner, RallyChances chances) {
    double server = chances.serverWins(state.serve()).value();
    return winner == state.serve().side() ? server : 1 - server;
  }

  /** The next state; a tie-break repeats every two points, so late scores are taken back by two. */
  private static GameState next(GameState state, Side winner) {
    GameState next = state.after(Rally.wonBy(winner));
    int target = state.format().goal().targets().a();
    while (!next.isOver() && Math.min(next.score().a(), next.score().b()) >= target + 1) {
      next =
          new GameState(
              next.format(),
              Score.of(next.score().a() - 2, next.score().b() - 2),
              next.serve(),
              next.onRight(),
              next.changeOfEnds(),
              next.clock());
    }
    return next;
  }
}
