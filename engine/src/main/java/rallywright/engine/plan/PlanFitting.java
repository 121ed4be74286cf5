package rallywright.engine.plan;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Fits a choice to the clock once it is known who meets whom: the search counts usual games, the
 * plan counts its own. Rounds go as long as the plan is too long, then come as long as one fits by
 * both counts.
 */
final class PlanFitting {

  /** So many rounds are tried at once before nothing more is said to fit. */
  private static final int TRIES = 3;

  private final SearchModel model;
  private final SearchRules rules;
  private final PlanBuilder builder;
  private final PlanReading reading;

  PlanFitting(SearchModel model, SearchRules rules, PlanBuilder builder, PlanReading reading) {
    this.model = model;
    this.rules = rules;
    this.builder = builder;
    this.reading = reading;
  }

  int[] fit(int[] choice) {
    int[] stints = choice;
    while (IntStream.of(stints).sum() > 0 && !fits(stints)) {
      stints = withoutLeast(stints);
    }
    return IntStream.of(stints).sum() > 0 ? filled(stints) : stints;
  }

  private boolean fits(int[] stints) {
    return reading.keepsTheClock(builder.build(Walk.through(model, stints)));
  }

  private boolean usuallyFits(int[] stints) {
    return rules.fitsTheBookedTime(Walk.through(model, stints)) == 0;
  }

  private int[] filled(int[] start) {
    int[] stints = start;
    boolean more = true;
    while (more) {
      more = false;
      int[] now = stints;
      double before = worth(now);
      int[] candidates =
          IntStream.range(0, now.length)
              .filter(i -> now[i] < model.options().get(i).mostStints())
              .boxed()
              .sorted(Comparator.comparingDouble(i -> -worth(with(now, i, 1))))
              .limit(TRIES)
              .mapToInt(Integer::intValue)
              .toArray();
      for (int i : candidates) {
        int[] next = with(now, i, 1);
        if (worth(next) > before + 1e-9 && usuallyFits(next) && fits(next)) {
          stints = next;
          more = true;
          break;
        }
      }
    }
    return stints;
  }

  private static int[] with(int[] stints, int option, int change) {
    int[] next = stints.clone();
    next[option] += change;
    return next;
  }

  /** The score, the clock aside: the clock of the plan itself decides. */
  private double worth(int[] stints) {
    return rules.worth(Walk.through(model, stints));
  }

  /** The choice without the stint whose loss costs least. */
  private int[] withoutLeast(int[] stints) {
    int[] best = new int[stints.length];
    double bestScore = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < stints.length; i++) {
      if (stints[i] > 0) {
        int[] next = with(stints, i, -1);
        double score = worth(next);
        if (score > bestScore) {
          best = next;
          bestScore = score;
        }
      }
    }
    return best;
  }
}
