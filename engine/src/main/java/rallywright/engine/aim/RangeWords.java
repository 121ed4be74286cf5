package rallywright.engine.aim;

import java.util.function.DoubleFunction;
import rallywright.engine.flight.Ranged;

/** A number with its range in words; where rounding hides the range there is none. */
public final class RangeWords {

  private RangeWords() {}

  /**
   * A number and in brackets its range.
   *
   * @param number with its range
   * @param words how a number is written
   * @return for example "25 mph (24 to 26 mph)", or "25 mph" where no ball changes it
   */
  public static String with(Ranged number, DoubleFunction<String> words) {
    String range = range(number, words);
    return words.apply(number.central()) + (range.isEmpty() ? "" : " (" + range + ")");
  }

  /**
   * The range alone.
   *
   * @param number with its range
   * @param words how a number is written
   * @return for example "24 to 26 mph"; empty where no ball changes the number
   */
  public static String range(Ranged number, DoubleFunction<String> words) {
    if (!number.isKnown()) {
      return "";
    }
    String low = words.apply(number.low());
    String high = words.apply(number.high());
    return low.equals(high) ? "" : withoutUnit(low, high) + " to " + high;
  }

  /** The lower end without its unit where both are one number and the same unit. */
  private static String withoutUnit(String low, String high) {
    int lowGap = low.indexOf(' ');
    int highGap = high.indexOf(' ');
    boolean same =
        lowGap > 0
            && highGap > 0
            && low.substring(lowGap).equals(high.substring(highGap))
            && low.substring(lowGap + 1).chars().allMatch(Character::isLetter);
    return same ? low.substring(0, lowGap) : low;
  }
}
