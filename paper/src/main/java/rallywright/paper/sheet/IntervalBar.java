package rallywright.paper.sheet;

import java.util.Locale;

/**
 * An estimate as a bar with soft ends: each place is a share of the scale, 0 at its left end and 1
 * at its right.
 *
 * @param low where the 80 % interval begins
 * @param middle the estimate
 * @param high where the interval ends
 */
public record IntervalBar(double low, double middle, double high) {

  private static final double WIDTH = 100;

  /** Checks the order and the range; the check is written so that NaN fails it. */
  public IntervalBar {
    if (!(low >= 0 && low <= middle && middle <= high && high <= 1)) {
      throw new IllegalArgumentException(
          "The bar ("
              + low
              + ", "
              + middle
              + ", "
              + high
              + ") must rise from 0 to 1. Maybe cut it off at the ends of the scale.");
    }
  }

  /**
   * Where a part of the bar begins.
   *
   * @param share how far from the low end, 0 to 1
   * @return the place on a scale of 100
   */
  public String at(double share) {
    return number(low + share * (high - low));
  }

  /**
   * How wide a part of the bar is.
   *
   * @param share its share of the bar, 0 to 1
   * @return the width on a scale of 100
   */
  public String wide(double share) {
    return number(share * (high - low));
  }

  /**
   * Where the tick stands.
   *
   * @return the place on a scale of 100
   */
  public String tick() {
    return number(middle);
  }

  private static String number(double share) {
    return String.format(Locale.ROOT, "%.2f", WIDTH * share);
  }
}
