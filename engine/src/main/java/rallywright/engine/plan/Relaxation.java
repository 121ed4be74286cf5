package rallywright.engine.plan;

import java.util.Arrays;
import java.util.List;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.pace.SessionTime;
import rallywright.engine.plan.DrillChoices.Choice;
import rallywright.engine.plan.SearchModel.Option;

/**
 * A bound that no plan which keeps to the rules can pass, and the choice that almost reaches it.
 *
 * <p>For the maintainer: only the spread of the session's time couples the drills in a way that is
 * not a sum. It is a root of squares and is replaced by a plane from below: for any weights u with
 * Σu² ≤ 1, √(V + Σs² + (cT)²) ≥ u₀√V + Σ u s + u c T (Cauchy and Schwarz), and √V lies above its
 * chord wherever V does not leave the chord. The plane is laid at the choice found, where it
 * touches; chords are laid over two ranges of V, and the bound is the larger of both. What is left
 * is a knapsack, one choice of rounds for each drill, solved exactly by {@link Knapsack}. A session
 * longer than {@link Walk#LONG_SESSION_MINUTES} must have a rest: the bound is the larger one of
 * "short without a rest" and "long with one". The price of a block and of its later rounds is
 * counted, so the bound is one on benefit less prices; hard minutes in a row, the order of drills
 * and the price of other equipment are left out.
 */
final class Relaxation {

  private static final int ROUNDS = 3;

  private final SearchModel model;
  private final List<DrillChoices> drills;
  private final Knapsack knapsack;
  private final double reserve;

  /** A bound and a choice of stints near it. */
  @SuppressWarnings("ArrayRecordComponent") // a choice as the search counts it, never compared
  record Answer(double bound, int[] stints) {}

  /**
   * A plane below the spread of a session's time, in seconds: what each second, each square second
   * of variance and each drill's shared second adds, beside a constant.
   */
  @SuppressWarnings("ArrayRecordComponent") // read in an inner loop, never compared
  record Plane(double perSecond, double perVariance, double[] perShared) {

    static Plane mean(int drills) {
      return new Plane(1, 0, new double[drills]);
    }

    double cost(int drill, Choice choice) {
      return perSecond * choice.seconds()
          + perVariance * choice.variance()
          + perShared[drill] * choice.shared();
    }
  }

  /** The parts of the root at some choice: the day's, the games' and each drill's. */
  @SuppressWarnings("ArrayRecordComponent") // read in an inner loop, never compared
  private record Spread(double day, double games, double[] shared) {

    boolean isLike(Spread other) {
      return day == other.day && games == other.games && Arrays.equals(shared, other.shared);
    }

    double length() {
      double sum = day * day + games * games;
      return Math.sqrt(sum + Arrays.stream(shared).map(each -> each * each).sum());
    }
  }

  Relaxation(SearchModel model, SearchRules rules, List<DrillChoices> drills) {
    this.model = model;
    this.drills = drills;
    this.reserve = Math.max(0, rules.reserve());
    List<SkillGroup> groups = rules.groupsToTouch();
    int full = rules.needsFullGame() ? 1 << groups.size() : 0;
    int[] touches = new int[drills.size()];
    for (int drill = 0; drill < touches.length; drill++) {
      Option option = model.options().get(drills.get(drill).options().get(0));
      for (int group = 0; group < groups.size(); group++) {
        touches[drill] |= option.groups().contains(groups.get(group)) ? 1 << group : 0;
      }
      touches[drill] |= option.isFullGame() ? full : 0;
    }
    knapsack = new Knapsack(drills, touches, ((1 << groups.size()) - 1) | full);
  }

  static double bound(SearchModel model, SearchRules rules) {
    return new Relaxation(model, rules, DrillChoices.of(model, rules)).best().bound();
  }

  Answer best() {
    SessionWish wish = model.context().wish();
    double booked = 60.0 * wish.minutes();
    double rest = 60 * BlockBuilder.restMinutes(wish);
    if (wish.minutes() <= Walk.LONG_SESSION_MINUTES) {
      return reserved(booked, model.fixedSeconds());
    }
    Answer restful = reserved(booked, model.fixedSeconds() + rest);
    double brief = 60 * Walk.LONG_SESSION_MINUTES - model.fixedSeconds();
    Answer mean = answer(knapsack.best(Plane.mean(drills.size()), brief));
    return restful.bound() >= mean.bound() ? restful : mean;
  }

  private Answer answer(Knapsack.Filled filled) {
    return new Answer(filled.worth(), stints(filled.choices()));
  }

  private Answer reserved(double booked, double fixed) {
    double most = largestVariance(booked / (1 + reserve * SessionTime.DAY_CV) - fixed);
    Spread spread = new Spread(1, 0, new double[drills.size()]);
    Answer best = new Answer(Double.POSITIVE_INFINITY, new int[model.options().size()]);
    for (int round = 0; round < ROUNDS; round++) {
      double split = Math.min(most, 1.2 * spread.games() * spread.games());
      Answer low = chord(booked, fixed, spread, new double[] {0, split});
      Answer high = chord(booked, fixed, spread, new double[] {split, most});
      Answer larger = low.bound() >= high.bound() ? low : high;
      best = larger.bound() <= best.bound() ? larger : best;
      Spread next = spread(larger.stints(), fixed);
      if (next.isLike(spread)) {
        return best;
      }
      spread = next;
    }
    return best;
  }

  /** The best plan whose games' variance lies in a range. */
  private Answer chord(double booked, double fixed, Spread at, double[] variances) {
    double length = at.length();
    double low = Math.sqrt(variances[0]);
    double high = Math.sqrt(variances[1]);
    if (!(high > low)) {
      return new Answer(0, new int[model.options().size()]);
    }
    double slope = 1 / (low + high);
    double ofGames = reserve * at.games() / length;
    double perSecond = 1 + reserve * SessionTime.DAY_CV * at.day() / length;
    double[] perShared = new double[drills.size()];
    for (int drill = 0; drill < perShared.length; drill++) {
      perShared[drill] = reserve * at.shared()[drill] / length;
    }
    Plane plane = new Plane(perSecond, ofGames * slope, perShared);
    double constant = ofGames * (low - slope * variances[0]);
    return answer(knapsack.best(plane, booked - perSecond * fixed - constant));
  }

  private Spread spread(int[] stints, double fixed) {
    double seconds = fixed;
    double variance = 0;
    double[] shared = new double[drills.size()];
    for (int drill = 0; drill < drills.size(); drill++) {
      for (Choice choice : drills.get(drill).choices()) {
        if (isChosen(drills.get(drill), choice, stints)) {
          seconds += choice.seconds();
          variance += choice.variance();
          shared[drill] = choice.shared();
        }
      }
    }
    return new Spread(SessionTime.DAY_CV * seconds, Math.sqrt(variance), shared);
  }

  private static boolean isChosen(DrillChoices drill, Choice choice, int[] stints) {
    for (int i = 0; i < choice.stints().length; i++) {
      if (stints[drill.options().get(i)] != choice.stints()[i]) {
        return false;
      }
    }
    return true;
  }

  private double largestVariance(double seconds) {
    double most = 0;
    for (DrillChoices drill : drills) {
      for (Choice choice : drill.choices()) {
        most = choice.isNothing() ? most : Math.max(most, choice.variance() / choice.seconds());
      }
    }
    return most * Math.max(0, seconds) + 1e-6;
  }

  private int[] stints(List<Choice> choices) {
    int[] stints = new int[model.options().size()];
    for (int drill = 0; drill < choices.size(); drill++) {
      List<Integer> options = drills.get(drill).options();
      for (int i = 0; i < options.size(); i++) {
        stints[options.get(i)] = choices.get(drill).stints()[i];
      }
    }
    return stints;
  }
}
