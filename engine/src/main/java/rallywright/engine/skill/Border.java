package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;

/**
 * The effects and gains that all players share and that scores can teach, by number from 0: the
 * border of the system, at which groups that never meet still touch.
 */
final class Border {
  private final List<SharedEffect> learned = new ArrayList<>();
  private final int[] effects;
  private final int[] gains;

  private Border(List<SharedEffect> effects, List<SharedEffect> gains) {
    this.effects = numbers(effects);
    this.gains = numbers(gains);
  }

  static Border of(Club club) {
    return new Border(club.effects(), club.gains());
  }

  /** A system without anything shared. */
  static Border none() {
    return new Border(List.of(), List.of());
  }

  private int[] numbers(List<SharedEffect> shared) {
    int[] numbers = new int[shared.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = shared.get(i).isLearned() ? learned.size() : -1;
      if (numbers[i] >= 0) {
        learned.add(shared.get(i));
      }
    }
    return numbers;
  }

  int size() {
    return learned.size();
  }

  /** The number of an effect, or −1 where its value is known. */
  int effect(int effect) {
    return effects[effect];
  }

  /** The number of a gain, or −1 where its value is known. */
  int gain(int gain) {
    return gains[gain];
  }

  void copyMeans(double[] into, int start) {
    for (int i = 0; i < size(); i++) {
      into[start + i] = learned.get(i).mean();
    }
  }

  double[] means() {
    double[] means = new double[size()];
    copyMeans(means, 0);
    return means;
  }

  double precision(int i) {
    return 1 / (learned.get(i).sd() * learned.get(i).sd());
  }

  /** log density at x without the term of 2π, and its gradient added to {@code gradient}. */
  double logDensity(double[] x, double[] gradient) {
    double sum = 0;
    for (int i = 0; i < size(); i++) {
      double away = x[i] - learned.get(i).mean();
      sum += Math.log(precision(i)) / 2 - away * away * precision(i) / 2;
      gradient[i] -= away * precision(i);
    }
    return sum;
  }
}
