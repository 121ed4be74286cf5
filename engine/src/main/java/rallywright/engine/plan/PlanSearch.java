package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Finds a good choice: two starts, each annealed with whole-drill moves by itself, then annealing
 * on from the best, and at the end the best change of two drills at once.
 *
 * <p>For the maintainer: moves are one stint more or less, a stint from one option to another, a
 * drill replaced by another one, a stint moved to the other line of its drill. The number of steps
 * is fixed, so the same seed gives the same plan on every machine.
 */
final class PlanSearch {

  /** More stints of one drill along one line are never planned. Assumption of this project. */
  static final int MOST_STINTS = 8;

  private static final List<DrillChoices.Choice> NONE = List.of();
  private static final int STEPS_FOR_AN_OPTION = 2_500;
  private static final int ROUNDS = 8;
  private static final double HOT = 0.15;
  private static final double COLD = 0.0005;

  private final SearchModel model;
  private final SearchRules rules;
  private final List<DrillChoices> drills;
  private final Relaxation.Answer relaxed;
  private final SplittableRandom random;
  private final Walk walk;

  PlanSearch(SearchModel model, SearchRules rules, long seed) {
    this.model = model;
    this.rules = rules;
    this.drills = DrillChoices.of(model, rules);
    this.relaxed = new Relaxation(model, rules, drills).best();
    this.random = new SplittableRandom(seed);
    this.walk = Walk.through(model, new int[model.options().size()]);
  }

  private double score(int[] stints) {
    return rules.score(walk.again(stints));
  }

  /** The best choice found; all zero where nothing fits. */
  int[] best(SearchWatch watch) {
    if (model.options().isEmpty()) {
      return new int[0];
    }
    List<int[]> starts = List.of(greedy(rules.pinnedStints()), greedy(fitting(relaxed.stints())));
    int[] best = better(starts.get(0), starts.get(1));
    for (int round = 0; round < ROUNDS; round++) {
      int[] start = round < ROUNDS / 2 ? starts.get(round % starts.size()) : best;
      int[] found = polished(annealed(start, round));
      best = better(best, round < ROUNDS / 2 ? found : twoAtOnce(found));
      double benefit = walk.again(best).benefit();
      double bound = benefit + relaxed.bound() - score(best);
      SearchWatch.Progress progress =
          new SearchWatch.Progress((round + 1.0) / ROUNDS, benefit, bound, chosen(best));
      if (watch.hear(progress) == SearchWatch.Verdict.STOP) {
        return best;
      }
    }
    return best;
  }

  private List<SearchWatch.Chosen> chosen(int[] stints) {
    List<SearchWatch.Chosen> chosen = new ArrayList<>();
    for (int i = 0; i < stints.length; i++) {
      DrillLine line = model.options().get(i).line();
      if (stints[i] > 0) {
        chosen.add(new SearchWatch.Chosen(line.drill(), line.line(), stints[i]));
      }
    }
    return chosen;
  }

  private int[] better(int[] one, int[] other) {
    return score(other) > score(one) + 1e-12 ? other : one;
  }

  /** The best of all that were tried, with its score, so that no score is counted twice. */
  private final class Best {

    private int[] stints;
    private double score;

    Best(int[] start) {
      stints = start;
      score = score(start);
    }

    void tried(int[] other) {
      double next = score(other);
      if (next > score + 1e-12) {
        stints = other.clone();
        score = next;
      }
    }
  }

  /** The relaxed choice with rounds taken out until it keeps to the rules. */
  private int[] fitting(int[] relaxedStints) {
    int[] stints = relaxedStints.clone();
    while (rules.fitsTheBookedTime(walk.again(stints)) > 0) {
      int least = -1;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < stints.length; i++) {
        if (stints[i] > 0) {
          stints[i]--;
          double score = score(stints);
          stints[i]++;
          least = score > most ? i : least;
          most = Math.max(most, score);
        }
      }
      if (least < 0) {
        return stints;
      }
      stints[least]--;
    }
    return stints;
  }

  private int[] annealed(int[] start, int round) {
    int[] now = start.clone();
    int[] next = new int[now.length];
    double nowScore = rules.lenientScore(walk.again(now));
    Best best = new Best(start);
    double hot = HOT / (1 + round % 3);
    int steps = STEPS_FOR_AN_OPTION * now.length;
    double cooling = Math.pow(COLD / hot, 1.0 / steps);
    double heat = hot;
    for (int step = 0; step < steps; step++) {
      System.arraycopy(now, 0, next, 0, now.length);
      move(next);
      heat *= cooling;
      if (Arrays.equals(next, now)) {
        continue;
      }
      double nextScore = rules.lenientScore(walk.again(next));
      if (nextScore >= nowScore || random.nextDouble() < Math.exp((nextScore - nowScore) / heat)) {
        int[] before = now;
        now = next;
        next = before;
        nowScore = nextScore;
        if (nextScore > best.score) {
          best.tried(now);
        }
      }
    }
    return best.stints;
  }

  /**
   * The best neighbour again and again: every other choice of one drill, every shift of a stint.
   */
  private int[] polished(int[] start) {
    Best best = new Best(start.clone());
    boolean improved = true;
    while (improved) {
      int[] before = best.stints;
      int[] next = before.clone();
      for (DrillChoices drill : drills) {
        tryAll(drill, next, best);
      }
      for (int from = 0; from < before.length; from++) {
        for (int to = 0; before[from] > 0 && to < before.length; to++) {
          System.arraycopy(before, 0, next, 0, before.length);
          shift(next, from, to);
          best.tried(next);
        }
      }
      improved = best.stints != before;
    }
    return best.stints;
  }

  /**
   * The best change of two drills at once, again and again: a drill of the plan takes any other
   * choice and, in the time that this leaves, a second drill takes its best one.
   */
  private int[] twoAtOnce(int[] start) {
    Best best = new Best(start);
    boolean improved = true;
    while (improved) {
      int[] before = best.stints;
      for (DrillChoices one : drills) {
        for (DrillChoices.Choice choice : one.isIn(before) ? one.choices() : NONE) {
          int[] first = one.with(before, choice);
          for (DrillChoices other : drills) {
            if (other.drill() != one.drill()) {
              tryAll(other, first, best);
            }
          }
        }
      }
      improved = best.stints != before;
    }
    return best.stints;
  }

  private static void put(int[] stints, DrillChoices drill, int[] choice) {
    for (int i = 0; i < choice.length; i++) {
      stints[drill.options().get(i)] = choice[i];
    }
  }

  /** Tries every choice of a drill, all else alike; afterwards all stands as it stood. */
  private void tryAll(DrillChoices drill, int[] stints, Best best) {
    int[] before = drill.options().stream().mapToInt(option -> stints[option]).toArray();
    for (DrillChoices.Choice choice : drill.choices()) {
      put(stints, drill, choice.stints());
      best.tried(stints);
    }
    put(stints, drill, before);
  }

  /** Adds the stint that brings most per second as long as one brings anything. */
  private int[] greedy(int[] start) {
    int[] stints = start.clone();
    double now = score(stints);
    while (true) {
      int chosen = -1;
      double most = 0;
      double chosenScore = now;
      for (int i = 0; i < stints.length; i++) {
        if (stints[i] < model.options().get(i).mostStints()) {
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
    switch (random.nextInt(6)) {
      case 0 -> add(stints, one, 1);
      case 1 -> add(stints, one, -1);
      case 2 -> shift(stints, one, other);
      case 3 -> replace(stints, one, other);
      case 4 -> choose(stints);
      default -> shift(stints, one, otherLine(one));
    }
  }

  private void add(int[] stints, int option, int change) {
    int most = model.options().get(option).mostStints();
    stints[option] = Math.max(0, Math.min(most, stints[option] + change));
  }

  private void shift(int[] stints, int from, int to) {
    if (stints[from] > 0 && from != to) {
      add(stints, from, -1);
      add(stints, to, 1);
    }
  }

  /** Another choice for one drill and for a second one that is in the plan. */
  private void choose(int[] stints) {
    take(stints, drills.get(random.nextInt(drills.size())));
    if (random.nextInt(2) == 0) {
      take(stints, drills.get(random.nextInt(drills.size())));
    }
  }

  private void take(int[] stints, DrillChoices drill) {
    put(stints, drill, drill.choices().get(random.nextInt(drill.choices().size())).stints());
  }

  private void replace(int[] stints, int gone, int come) {
    int drill = model.options().get(gone).drill();
    if (model.options().get(come).drill() == drill) {
      return;
    }
    double seconds = 0;
    for (int i = 0; i < stints.length; i++) {
      if (model.numbers().drill(i) == drill) {
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
