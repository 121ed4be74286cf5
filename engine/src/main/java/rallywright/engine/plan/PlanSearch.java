package rallywright.engine.plan;

import java.util.SplittableRandom;

/**
 * Finds a good choice: a greedy start, then annealing with whole-drill moves.
 *
 * <p>For the maintainer: moves are one stint more or less, a stint from one option to another, a
 * drill replaced by another one, a stint moved to the other line of its drill. The number of steps
 * is fixed, so the same seed gives the same plan on every machine.
 */
final class PlanSearch {

  /** More stints of one drill along one line are never planned. Assumption of this project. */
  static final int MOST_STINTS = 8;

  private static final int STEPS = 40_000;
  private static final double HOT = 0.15;
  private static final double COLD = 0.0005;

  private final SearchModel model;
  private final SearchRules rules;
  private final SplittableRandom random;

  PlanSearch(SearchModel model, SearchRules rules, long seed) {
    this.model = model;
    this.rules = rules;
    this.random = new SplittableRandom(seed);
  }

  private double score(int[] stints) {
    return rules.score(Walk.through(model, stints));
  }

  /** The best choice found; all zero where nothing fits. */
  int[] best() {
    int[] now = greedy();
    if (now.length == 0) {
      return now;
    }
    int[] best = now.clone();
    double nowScore = score(now);
    double bestScore = nowScore;
    for (int step = 0; step < STEPS; step++) {
      double heat = HOT * Math.pow(COLD / HOT, (double) step / STEPS);
      int[] next = now.clone();
      move(next);
      double nextScore = score(next);
      if (nextScore >= nowScore || random.nextDouble() < Math.exp((nextScore - nowScore) / heat)) {
        now = next;
        nowScore = nextScore;
      }
      if (nowScore > bestScore + 1e-12) {
        best = now.clone();
        bestScore = nowScore;
      }
    }
    return best;
  }

  /** Adds the stint that brings most per second as long as one brings anything. */
  int[] greedy() {
    int[] stints = new int[model.options().size()];
    double now = score(stints);
    while (true) {
      int chosen = -1;
      double most = 0;
      double chosenScore = now;
      for (int i = 0; i < stints.length; i++) {
        if (stints[i] < MOST_STINTS) {
          stints[i]++;
          double next = score(stints);
          stints[i]--;
          double rate = (next - now) / model.options().get(i).stint().seconds().mean();
          if (rate > most) {
            most = rate;
            chosen = i;
            chosenScore = next;
          }
        }
      }
      if (chosen < 0) {
        return stints;
      }
      stints[chosen]++;
      now = chosenScore;
    }
  }

  private void move(int[] stints) {
    int one = random.nextInt(stints.length);
    int other = random.nextInt(stints.length);
    switch (random.nextInt(5)) {
      case 0 -> add(stints, one, 1);
      case 1 -> add(stints, one, -1);
      case 2 -> shift(stints, one, other);
      case 3 -> replace(stints, one, other);
      default -> shift(stints, one, otherLine(one));
    }
  }

  private static void add(int[] stints, int option, int change) {
    stints[option] = Math.max(0, Math.min(MOST_STINTS, stints[option] + change));
  }

  private static void shift(int[] stints, int from, int to) {
    if (stints[from] > 0 && from != to) {
      add(stints, from, -1);
      add(stints, to, 1);
    }
  }

  private void replace(int[] stints, int gone, int come) {
    int drill = model.options().get(gone).drill();
    if (model.options().get(come).drill() == drill) {
      return;
    }
    double seconds = 0;
    for (int i = 0; i < stints.length; i++) {
      if (model.options().get(i).drill() == drill) {
        seconds += stints[i] * model.options().get(i).stint().seconds().mean();
        stints[i] = 0;
      }
    }
    double each = model.options().get(come).stint().seconds().mean();
    add(stints, come, (int) Math.rint(seconds / each));
  }

  private int otherLine(int option) {
    int drill = model.options().get(option).drill();
    for (int near = Math.max(0, option - 1); near <= option + 1; near++) {
      boolean inside = near < model.options().size();
      if (inside && near != option && model.options().get(near).drill() == drill) {
        return near;
      }
    }
    return option;
  }
}
