package rallywright.engine.plan;

import java.util.List;
import rallywright.engine.plan.SearchModel.Option;

/** What a walk asks of every option, in arrays: it asks some million times in a search. */
final class OptionNumbers {

  private final int[] drills;
  private final double[] seconds;
  private final double[] variances;
  private final double[] shared;
  private final boolean[] hard;
  private final boolean[] fullGames;

  OptionNumbers(List<Option> options) {
    int size = options.size();
    drills = new int[size];
    seconds = new double[size];
    variances = new double[size];
    shared = new double[size];
    hard = new boolean[size];
    fullGames = new boolean[size];
    for (int i = 0; i < size; i++) {
      Option option = options.get(i);
      drills[i] = option.drill();
      seconds[i] = option.part().seconds();
      variances[i] = option.variance();
      shared[i] = option.shared();
      hard[i] = option.isHard();
      fullGames[i] = option.isFullGame();
    }
  }

  /** The place of an option's drill in the list of drills. */
  int drill(int option) {
    return drills[option];
  }

  /** The mean time of a block of so many stints for everybody. */
  double blockSeconds(int option, int stints) {
    return Option.blockSeconds(stints, seconds[option]);
  }

  /** The variance of a stint's time in s², the drill's own pace aside. */
  double variance(int option) {
    return variances[option];
  }

  /** Seconds by which the drill's unsure pace spreads a stint: one standard deviation. */
  double shared(int option) {
    return shared[option];
  }

  boolean isHard(int option) {
    return hard[option];
  }

  boolean isFullGame(int option) {
    return fullGames[option];
  }
}
