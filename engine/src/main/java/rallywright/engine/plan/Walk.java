package rallywright.engine.plan;

import rallywright.engine.drill.SkillGroup;
import rallywright.engine.pace.SessionTime;
import rallywright.engine.plan.SearchModel.Option;

/** One walk through a choice in the order of the session: times, rests and what was touched. */
final class Walk {

  /** Longer sessions than this have a water break. Assumption of this project. */
  static final double LONG_SESSION_MINUTES = 75;

  /** In a long session water comes about this often. Assumption of this project. */
  static final double WATER_EVERY_MINUTES = 45;

  private final SearchModel model;
  private final int[] stints;
  private final boolean[] restBefore;
  private final double[] minutesByDrill;
  private final double[] sharedByDrill;
  private double meanSeconds;
  private double variance;
  private double hardMinutes;
  private double sinceRest;
  private double overHard;
  private int fullGames;
  private int equipmentChanges;
  private int equipment;
  private int groupBits;

  private Walk(SearchModel model, int[] stints) {
    this.model = model;
    this.stints = stints;
    restBefore = new boolean[stints.length];
    minutesByDrill = new double[model.drills()];
    sharedByDrill = new double[model.drills()];
    meanSeconds = model.fixedSeconds();
    sinceRest = meanSeconds / 60;
    for (int i = 0; i < stints.length; i++) {
      if (stints[i] > 0) {
        step(i, model.options().get(i));
      }
    }
  }

  static Walk through(SearchModel model, int[] stints) {
    return new Walk(model, stints);
  }

  private void step(int i, Option option) {
    double minutes = option.blockSeconds(stints[i]) / 60;
    if (needsRest(option, minutes)) {
      restBefore[i] = true;
      meanSeconds += 60 * model.restMinutes();
      hardMinutes = 0;
      sinceRest = 0;
    }
    hardMinutes = option.isHard() ? hardMinutes + minutes : 0;
    overHard += Math.max(0, hardMinutes - model.context().wish().maxHardMinutes());
    sinceRest += minutes;
    meanSeconds += 60 * minutes;
    variance += stints[i] * option.stint().seconds().variance();
    minutesByDrill[option.drill()] += stints[i] * option.minutesPerStint();
    sharedByDrill[option.drill()] += stints[i] * option.stint().pacedSeconds() * option.drillCv();
    groupBits |= model.groupBits(i);
    fullGames += option.isFullGame() ? 1 : 0;
    int needed = model.equipment(i);
    equipmentChanges += needed == equipment ? 0 : 1;
    equipment = needed;
  }

  private boolean needsRest(Option option, double minutes) {
    double allowed = model.context().wish().maxHardMinutes();
    boolean tooHard = option.isHard() && hardMinutes > 0 && hardMinutes + minutes > allowed;
    return tooHard || sinceRest + minutes / 2 >= model.restEveryMinutes();
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
    double sum = variance + day * day;
    for (double shared : sharedByDrill) {
      sum += shared * shared;
    }
    return (meanSeconds + reserve * Math.sqrt(sum)) / 60;
  }

  double benefit() {
    return model.benefit(minutesByDrill);
  }

  double overHardMinutes() {
    return overHard;
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
