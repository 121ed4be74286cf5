package rallywright.engine.odds;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import rallywright.engine.odds.GameChain.Link;
import rallywright.engine.score.Score;
import rallywright.engine.score.Serve;
import rallywright.engine.score.Side;

/**
 * A solved chain run forward from one state: how often each state is expected to be visited, and
 * from that the slopes of the win chance and the chances of all final scores.
 *
 * <p>The slope of the win chance W by a chance c is the sum, over the states whose rally c decides,
 * of expected visits times (W if the server wins the rally less W if not): the recursion of W,
 * differentiated.
 */
final class ChainVisits {

  /** Scores are listed until the rest is below this. */
  static final double LISTED_UNTIL = 1e-12;

  /** No more final scores than this are listed, whatever the rest. */
  static final int MOST_SCORES = 100_000;

  private final ChainValues values;
  private final GameChain chain;
  private final double[] inflow;
  private final double[] visits;

  private ChainVisits(ChainValues values, int start) {
    this.values = values;
    this.chain = values.chain();
    this.inflow = new double[chain.states()];
    this.visits = new double[chain.states()];
    inflow[start] = 1;
    for (int block = 0; block < chain.blocks(); block++) {
      if (chain.blockStart(block + 1) > start) {
        run(block);
      }
    }
  }

  static ChainVisits from(ChainValues values, int start) {
    return new ChainVisits(values, start);
  }

  private void run(int block) {
    int first = chain.blockStart(block);
    int end = chain.blockStart(block + 1);
    double[] seen = Arrays.copyOfRange(inflow, first, end);
    values.factors(block).solveVisits(seen);
    System.arraycopy(seen, 0, visits, first, end - first);
    for (int state = first; state < end; state++) {
      for (int result = 0; result < 2; result++) {
        int target = values.link(state, result).target();
        if (target >= end) {
          inflow[target] += visits[state] * values.chance(state, result);
        }
      }
    }
  }

  double[] slopes(RallyChances chances) {
    double[] slopes = new double[chances.values().size()];
    for (int state = 0; state < chain.states(); state++) {
      Serve serve = chain.serve(state);
      double gain =
          values.winA(chain.ifServerWins(state).target())
              - values.winA(chain.ifServerLoses(state).target());
      slopes[chances.indexOf(serve)] += visits[state] * gain * chances.direction(serve);
    }
    return slopes;
  }

  /**
   * The chances of all final scores.
   *
   * @param fold how many points the starting score was folded back
   * @return the chances by score, and in {@code tail} what is not listed
   */
  ScoreTally tally(int fold) {
    Map<Score, Double> chances = new HashMap<>();
    int regular = chain.hasTieBreak() ? chain.blockStart(chain.blocks() - 1) : chain.states();
    for (int state = 0; state < regular; state++) {
      addEnds(chances, state, visits[state], 0);
    }
    double tail = chain.hasTieBreak() ? addTieBreak(chances, fold) : 0;
    return new ScoreTally(chances, tail);
  }

  /** Chances by score and the rest. */
  record ScoreTally(Map<Score, Double> chances, double tail) {}

  private double addTieBreak(Map<Score, Double> chances, int fold) {
    int block = chain.blocks() - 1;
    int first = chain.blockStart(block);
    BlockFactors round = values.factorsWithoutFold(block);
    double[] entering = Arrays.copyOfRange(inflow, first, chain.states());
    double rest = Arrays.stream(entering).sum();
    int shift = fold;
    while (rest >= LISTED_UNTIL && chances.size() < MOST_SCORES) {
      round.solveVisits(entering);
      double[] next = new double[entering.length];
      for (int i = 0; i < entering.length; i++) {
        addEnds(chances, first + i, entering[i], shift);
        for (int result = 0; result < 2; result++) {
          Link link = values.link(first + i, result);
          if (link.folds()) {
            next[link.target() - first] += entering[i] * values.chance(first + i, result);
          }
        }
      }
      entering = next;
      rest = Arrays.stream(entering).sum();
      shift += chain.pointsBack();
    }
    return rest;
  }

  private void addEnds(Map<Score, Double> chances, int state, double visited, int shift) {
    for (int result = 0; result < 2; result++) {
      Link link = values.link(state, result);
      double chance = visited * values.chance(state, result);
      if (link.target() < 0 && chance > 0) {
        Score before = chain.score(state);
        Side winner = link.target() == GameChain.A_WINS ? Side.A : Side.B;
        Score end = Score.of(before.a() + shift, before.b() + shift).pointTo(winner);
        chances.merge(end, chance, Double::sum);
      }
    }
  }
}
