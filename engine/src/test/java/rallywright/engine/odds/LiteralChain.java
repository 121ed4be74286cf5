package rallywright.engine.odds;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/**
 * The chain of a game as the scoring states themselves make it, state by state, and its dense
 * solution: the slow and plain way, as a reference for the odds.
 */
public final class LiteralChain {

  private final List<GameState> states = new ArrayList<>();
  private final Map<GameState, Integer> places = new HashMap<>();
  private final UnaryOperator<GameState> fold;

  private LiteralChain(UnaryOperator<GameState> fold) {
    this.fold = fold;
  }

  /**
   * Explores every state that can follow a start; {@code fold} may map a state onto an equal one.
   */
  public static LiteralChain explore(GameState start, UnaryOperator<GameState> fold) {
    LiteralChain chain = new LiteralChain(fold);
    Deque<GameState> open = new ArrayDeque<>();
    chain.add(fold.apply(start), open);
    while (!open.isEmpty()) {
      GameState state = open.removeFirst();
      for (Side winner : Side.values()) {
        GameState next = chain.next(state, winner);
        if (!next.isOver()) {
          chain.add(next, open);
        }
      }
    }
    return chain;
  }

  /** A tie-break repeats every two points: two points less for both sides is the same state. */
  public static GameState twoPointsBack(GameState state) {
    int target = state.format().goal().targets().a();
    Score score = state.score();
    boolean late = Math.min(score.a(), score.b()) >= target + 1;
    if (!late || state.isOver() || state.format().goal().cap().isPresent()) {
      return state;
    }
    Score back = Score.of(score.a() - 2, score.b() - 2);
    return twoPointsBack(
        new GameState(
            state.format(),
            back,
            state.serve(),
            state.onRight(),
            state.changeOfEnds(),
            state.clock()));
  }

  /** How many states go on. */
  public int size() {
    return states.size();
  }

  /** Win chance of A, mean and mean square of the rallies to come, from the first state. */
  public double[] solve(RallyChances chances) {
    int size = states.size();
    double[][] matrix = stay(chances);
    double[] wins = new double[size];
    double[] ones = new double[size];
    for (int i = 0; i < size; i++) {
      ones[i] = 1;
      for (Side winner : Side.values()) {
        GameState next = next(states.get(i), winner);
        if (next.isOver() && next.winner().orElseThrow() == Side.A) {
          wins[i] += chance(i, winner, chances);
        }
      }
    }
    double[] winA = DenseSolver.solve(matrix, wins);
    double[] mean = DenseSolver.solve(matrix, ones);
    double[] right = new double[size];
    for (int i = 0; i < size; i++) {
      right[i] = 2 * mean[i] - 1;
    }
    double[] square = DenseSolver.solve(matrix, right);
    return new double[] {winA[0], mean[0], square[0]};
  }

  /** Chances of the final scores, from the first state; exact only without a fold. */
  public Map<Score, Double> scores(RallyChances chances) {
    int size = states.size();
    double[][] matrix = stay(chances);
    double[][] transposed = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        transposed[j][i] = matrix[i][j];
      }
    }
    double[] first = new double[size];
    first[0] = 1;
    double[] visits = DenseSolver.solve(transposed, first);
    Map<Score, Double> ends = new LinkedHashMap<>();
    for (int i = 0; i < size; i++) {
      for (Side winner : Side.values()) {
        GameState next = next(states.get(i), winner);
        if (next.isOver()) {
          ends.merge(next.score(), visits[i] * chance(i, winner, chances), Double::sum);
        }
      }
    }
    return ends;
  }

  /** The smallest number of rallies within which the game ends with a chance. */
  public int quantile(RallyChances chances, double wish) {
    double[] now = new double[states.size()];
    now[0] = 1;
    double ended = 0;
    int rallies = 0;
    while (ended < wish - 1e-12) {
      rallies++;
      double[] later = new double[now.length];
      for (int i = 0; i < now.length; i++) {
        for (Side winner : Side.values()) {
          GameState next = next(states.get(i), winner);
          double chance = now[i] * chance(i, winner, chances);
          if (next.isOver()) {
            ended += chance;
          } else {
            later[places.get(next)] += chance;
          }
        }
      }
      now = later;
    }
    return rallies;
  }

  private double[][] stay(RallyChances chances) {
    double[][] matrix = new double[states.size()][states.size()];
    for (int i = 0; i < states.size(); i++) {
      matrix[i][i] += 1;
      for (Side winner : Side.values()) {
        GameState next = next(states.get(i), winner);
        if (!next.isOver()) {
          matrix[i][places.get(next)] -= chance(i, winner, chances);
        }
      }
    }
    return matrix;
  }

  private double chance(int state, Side winner, RallyChances chances) {
    var serve = states.get(state).serve();
    double serverWins = chances.serverWins(serve).value();
    return winner == serve.side() ? serverWins : 1 - serverWins;
  }

  private GameState next(GameState state, Side winner) {
    return fold.apply(state.after(Rally.wonBy(winner)));
  }

  private void add(GameState state, Deque<GameState> open) {
    if (places.putIfAbsent(state, states.size()) == null) {
      states.add(state);
      open.addLast(state);
    }
  }
}
