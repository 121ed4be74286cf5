package rallywright.engine.rotation;

/**
 * The cost of a rotation, counted from the beginning.
 *
 * @param meetings repeated partners, mates and opponents, with wishes for pairs
 * @param balance differences of strength
 * @param bench uneven sit-outs and those twice running
 */
record WholeCost(long meetings, long balance, long bench) {

  long total() {
    return meetings + balance + bench;
  }

  static WholeCost of(RotationProblem problem, int[][] lines) {
    int size = problem.game().size();
    boolean mates = problem.game().form() == RotationGame.Form.MATES;
    long balance = 0;
    int[] strengths = new int[problem.players()];
    for (int player = 0; player < strengths.length; player++) {
      strengths[player] = problem.millilogits(player);
    }
    for (int round = 0; round < lines.length; round++) {
      for (int first = 0; first < problem.seats(round); first += size) {
        balance += balance(lines[round], first, size, mates, strengths);
      }
    }
    return new WholeCost(meetings(problem, lines), balance, bench(problem, lines));
  }

  /**
   * The cost of one group's differences: the means of two pairs, or the span of mates.
   *
   * @param mates whether the first two are mates of all; else they are partners
   */
  static long balance(int[] line, int first, int size, boolean mates, int[] millilogits) {
    if (!mates) {
      int a = millilogits[line[first]] + millilogits[line[first + 1]];
      int b = millilogits[line[first + 2]] + millilogits[line[first + 3]];
      return RotationCost.ofDifference(Math.abs(a - b));
    }
    int least = Integer.MAX_VALUE;
    int most = Integer.MIN_VALUE;
    for (int seat = first; seat < first + size; seat++) {
      least = Math.min(least, millilogits[line[seat]]);
      most = Math.max(most, millilogits[line[seat]]);
    }
    return RotationCost.ofDifference(2L * (most - least));
  }

  private static long meetings(RotationProblem problem, int[][] lines) {
    int players = problem.players();
    int[][] close = new int[players][players];
    int[][] across = new int[players][players];
    RotationGame game = problem.game();
    for (int round = 0; round < lines.length; round++) {
      for (int first = 0; first < problem.seats(round); first += game.size()) {
        for (int seat = 0; seat < game.size(); seat++) {
          for (int mate = 0; mate < game.size(); mate++) {
            int[][] counts =
                game.relation(seat, mate) == RotationGame.Relation.CLOSE ? close : across;
            counts[lines[round][first + seat]][lines[round][first + mate]]++;
          }
        }
      }
    }
    long cost = problem.togetherCost();
    for (int one = 0; one < players; one++) {
      for (int other = one + 1; other < players; other++) {
        int cell = one * players + other;
        cost += problem.closeRepeat()[cell] * RotationCost.pairsOf(close[one][other]);
        cost += problem.closeFlat()[cell] * close[one][other];
        cost += RotationCost.OPPONENT_AGAIN * RotationCost.pairsOf(across[one][other]);
        cost += problem.acrossFlat()[cell] * across[one][other];
      }
    }
    return cost;
  }

  private static long bench(RotationProblem problem, int[][] lines) {
    int[] sits = new int[problem.players()];
    boolean[] satLast = new boolean[problem.players()];
    long cost = 0;
    for (int round = 0; round < lines.length; round++) {
      boolean[] sitsNow = new boolean[problem.players()];
      for (int place = problem.seats(round); place < lines[round].length; place++) {
        int player = lines[round][place];
        sits[player]++;
        sitsNow[player] = true;
        cost += satLast[player] ? RotationCost.TWICE_RUNNING : 0;
      }
      satLast = sitsNow;
    }
    for (int player = 0; player < sits.length; player++) {
      cost += problem.sittingCost(player, sits[player]);
    }
    return cost;
  }
}
