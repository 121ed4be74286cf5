package rallywright.engine.rotation;

import java.util.Optional;
import java.util.SplittableRandom;

/**
 * The rounds of a whist design as a start: its labels given to players so that matches are even.
 */
final class WhistStart {

  /** The share of a run's moves that is spent on labels; a label costs a whole recount. */
  private static final int MOVES_PER_LABEL_TRIAL = 500;

  private static final double HOT = 100_000;
  private static final double COLD = 2_000;

  private final RotationProblem problem;
  private final WhistDesign design;

  private WhistStart(RotationProblem problem, WhistDesign design) {
    this.problem = problem;
    this.design = design;
  }

  /** A start where everybody is there throughout, all that can play do, and no pair has a wish. */
  static Optional<WhistStart> of(RotationProblem problem) {
    boolean all =
        problem.isPlain()
            && problem.game().form() == RotationGame.Form.PAIRS
            && problem.groups(0) == problem.players() / 4;
    return all
        ? WhistDesign.of(problem.players()).map(design -> new WhistStart(problem, design))
        : Optional.empty();
  }

  int[][] lines(SplittableRandom dice, int moves) {
    int[] player = new int[problem.players()];
    for (int label = 0; label < player.length; label++) {
      player[label] = label;
    }
    int[][] lines = labelled(player);
    if (!problem.hasStrengths()) {
      return lines;
    }
    long cost = WholeCost.of(problem, lines).balance();
    int trials = moves / MOVES_PER_LABEL_TRIAL;
    for (int trial = 0; trial < trials; trial++) {
      double temperature = HOT * Math.pow(COLD / HOT, (double) trial / trials);
      int one = dice.nextInt(player.length);
      int other = dice.nextInt(player.length);
      exchange(player, one, other);
      int[][] next = labelled(player);
      long delta = WholeCost.of(problem, next).balance() - cost;
      if (delta <= 0 || dice.nextDouble() < Math.exp(-delta / temperature)) {
        cost += delta;
        lines = next;
      } else {
        exchange(player, one, other);
      }
    }
    return lines;
  }

  private static void exchange(int[] player, int one, int other) {
    int kept = player[one];
    player[one] = player[other];
    player[other] = kept;
  }

  private int[][] labelled(int[] player) {
    int[][] lines = new int[problem.rounds()][];
    for (int round = 0; round < lines.length; round++) {
      int[] labels = design.round(round);
      for (int place = 0; place < labels.length; place++) {
        labels[place] = player[labels[place]];
      }
      lines[round] = labels;
    }
    return lines;
  }
}
