package rallywright.engine.plan;

import java.util.Arrays;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.pace.SessionTime;
import rallywright.engine.plan.SearchModel.Option;

/**
 * One walk through a choice in the order of the session: times, rests and what was touched.
 *
 * <p>For the maintainer: this is the inner loop of the search. A walk can be taken again through
 * another choice, so that nothing is made anew a million times; the two lines of a drill stand side
 * by side, so what a drill brings is counted when the next drill begins. Where somebody comes late
 * or leaves early, every stint is counted with those who are there by then.
 */
final class Walk {

  /** Longer sessions than this have a water break. Assumption of this project. */
  static final double LONG_SESSION_MINUTES = 75;

  /** In a long session water comes about this often. Assumption of this project. */
  static final double WATER_EVERY_MINUTES = 45;

  private final SearchModel model;
  private final OptionNumbers numbers;
  private final boolean[] restBefore;
  private final int[] used;
  private final double[] minutes;
  private final boolean throughout;
  private int[] stints;
  private double meanSeconds;
  private double variance;
  private double sharedSquares;
  private double benefit;
  private double hardMinutes;
  private double sinceRest;
  private double overHard;
  private int fullGames;
  private int blocks;
  private int laterStints;
  private int tooFew;
  private int equipmentChanges;
  private int equipment;
  private int groupBits;
  private int drill;
  private int rounds;
  private double shared;

  private Walk(SearchModel model) {
    this.model = model;
    this.numbers = model.numbers();
    this.stints = new int[0];
    used = new int[model.options().size()];
    restBefore = new boolean[model.options().size()];
    minutes = new double[model.context().presence().companies()];
    throughout = model.context().presence().isThroughout();
  }

  /** A walk that no other one disturbs. */
  static Walk through(SearchModel model, int[] stints) {
    return new Walk(model).again(stints);
  }

  /** The same walk through another choice; what was read of it before is gone. */
  Walk again(int[] choice) {
    stints = choice;
    Arrays.fill(restBefore, false);
    meanSeconds = model.fixedSeconds();
    sinceRest = meanSeconds / 60;
    variance = 0;
    sharedSquares = 0;
    benefit = 0;
    hardMinutes = 0;
    overHard = 0;
    fullGames = 0;
    blocks = 0;
    laterStints = 0;
    tooFew = 0;
    equipmentChanges = 0;
    equipment = 0;
    groupBits = 0;
    drill = -1;
    rounds = 0;
    shared = 0;
    for (int i = 0; i < stints.length; i++) {
      if (stints[i] > 0) {
        step(i);
      }
    }
    leaveDrill();
    return this;
  }

  private void step(int i) {
    if (numbers.drill(i) != drill) {
      leaveDrill();
      drill = numbers.drill(i);
    }
    double usualSeconds = numbers.blockSeconds(i, stints[i]);
    if (needsRest(i, usualSeconds / 60)) {
      restBefore[i] = true;
      meanSeconds += 60 * model.restMinutes();
      hardMinutes = 0;
      sinceRest = 0;
    }
    double seconds = throughout ? usualSeconds : forThoseThere(i);
    if (throughout) {
      variance += stints[i] * numbers.variance(i);
      shared += stints[i] * numbers.shared(i);
      rounds += model.inTable(i, stints[i]);
    }
    double blockMinutes = seconds / 60;
    hardMinutes = numbers.isHard(i) ? hardMinutes + blockMinutes : 0;
    overHard += Math.max(0, hardMinutes - model.maxHardMinutes());
    sinceRest += blockMinutes;
    meanSeconds += seconds;
    groupBits |= model.groupBits(i);
    fullGames += numbers.isFullGame(i) ? 1 : 0;
    used[blocks] = i;
    blocks++;
    laterStints += Math.max(0, stints[i] - SearchRules.LONG_BLOCK_STINTS);
    int needed = model.equipment(i);
    equipmentChanges += needed == equipment ? 0 : 1;
    equipment = needed;
  }

  /** Stint after stint with those who are there; returns the seconds of the block. */
  private double forThoseThere(int i) {
    Presence presence = model.context().presence();
    double usual = model.options().get(i).stint().seconds().mean();
    double seconds = BlockClock.BLOCK_SECONDS;
    for (int stint = 0; stint < stints[i]; stint++) {
      double from = meanSeconds + seconds;
      long there = presence.during(from / 60, (from + usual) / 60);
      SearchModel.Part part = model.part(i, there);
      tooFew += part.enough() ? 0 : 1;
      variance += part.variance();
      shared += part.shared();
      seconds += part.seconds() + (stint > 0 ? BlockClock.STINT_SECONDS : 0);
      for (int company = 0; company < minutes.length; company++) {
        minutes[company] += (there >> company & 1) == 0 ? 0 : part.minutes();
      }
    }
    return seconds;
  }

  private void leaveDrill() {
    if (drill >= 0) {
      benefit += throughout ? model.benefitOf(drill, rounds) : model.benefit(drill, minutes);
      sharedSquares += shared * shared;
      Arrays.fill(minutes, 0);
      rounds = 0;
      shared = 0;
    }
  }

  private boolean needsRest(int option, double blockMinutes) {
    boolean tooHard =
        numbers.isHard(option)
            && hardMinutes > 0
            && hardMinutes + blockMinutes > model.maxHardMinutes();
    return tooHard || sinceRest + blockMinutes / 2 >= model.restEveryMinutes();
  }

  /** After how many minutes a rest is due. */
  static double restEvery(SessionWish wish) {
    double usual =
        wish.minutes() > LONG_SESSION_MINUTES ? WATER_EVERY_MINUTES : Double.POSITIVE_INFINITY;
    return wish.requests().rests().map(Requests.Rests::everyMinutes).orElse(usual);
  }

  SearchModel model() {
    return model;
  }

  int[] stints() {
    return stints;
  }

  boolean restBefore(int option) {
    return restBefore[option];
  }

  /** The minutes within which the session is done with the wished chance. */
  double reservedMinutes(double reserve) {
    double day = SessionTime.DAY_CV * meanSeconds;
    return (meanSeconds + reserve * Math.sqrt(variance + day * day + sharedSquares)) / 60;
  }

  double benefit() {
    return benefit;
  }

  double overHardMinutes() {
    return overHard;
  }

  /** How many stints have too few people by then. */
  int tooFew() {
    return tooFew;
  }

  /** How many blocks there are. */
  int blocks() {
    return blocks;
  }

  /** The option of a block, by its place among those with stints, from 0. */
  int used(int block) {
    return used[block];
  }

  /** How many stints come after the third of their block. */
  int laterStints() {
    return laterStints;
  }

  /** The groups of skills that are touched, as bits. */
  int groupBits() {
    return groupBits;
  }

  /** How many drills of the choice train a group. */
  int drillsOf(SkillGroup group) {
    int drills = 0;
    int last = -1;
    for (int i = 0; i < stints.length; i++) {
      Option option = model.options().get(i);
      if (stints[i] > 0 && option.drill() != last && option.groups().contains(group)) {
        drills++;
        last = option.drill();
      }
    }
    return drills;
  }

  int fullGames() {
    return fullGames;
  }

  int equipmentChanges() {
    return equipmentChanges;
  }
}
