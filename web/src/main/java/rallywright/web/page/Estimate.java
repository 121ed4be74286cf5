package rallywright.web.page;

import java.util.Locale;

/**
 * An estimate as a page draws it: a bar on a scale, at full height where the middle half of the
 * chance lies, tapering to the ends of the 80 % interval, with a tick at the middle and a sentence
 * beside it. For a normal distribution the middle half reaches 0.6745/1.2816 = 0.526 of the way
 * from the middle to the ends (quantiles of the normal distribution, standard tables).
 *
 * @param scale the scale that bars to be compared share
 * @param low the lower end of the 80 % interval
 * @param middle the middle
 * @param high the upper end of the 80 % interval
 * @param sentence what the bar says, in a coach's words
 */
public record Estimate(Scale scale, double low, double middle, double high, String sentence) {

  /** How far the full height reaches, as a part of the way to the ends. */
  private static final double FULL_PART = 0.526;

  private static final double WIDTH = 320;
  private static final double TOP = 4;
  private static final double BOTTOM = 20;

  /**
   * What a row of bars is measured on.
   *
   * @param low the value at the left end
   * @param high the value at the right end
   * @param lowWords what the left end means
   * @param highWords what the right end means
   */
  public record Scale(double low, double high, String lowWords, String highWords) {
    /** Checks that the scale has a length. */
    public Scale {
      if (!(low < high)) {
        throw new IllegalArgumentException(
            "The scale must rise, not go from " + low + " to " + high + ".");
      }
    }
  }

  /** Checks the order. */
  public Estimate {
    if (!(low <= middle && middle <= high)) {
      throw new IllegalArgumentException(
          "An estimate must have its middle ("
              + middle
              + ") between "
              + low
              + " and "
              + high
              + ".");
    }
  }

  /**
   * An estimate of a chance. The mean of a very lopsided uncertainty can lie beyond the ends of its
   * interval; the tick then stands at the end.
   */
  public static Estimate ofChance(
      Scale scale, double low, double mean, double high, String sentence) {
    return new Estimate(scale, low, Math.max(low, Math.min(high, mean)), high, sentence);
  }

  /** The outline of the bar for the points attribute of a polygon in a box of 320 × 24. */
  public String outline() {
    double fullLow = middle - FULL_PART * (middle - low);
    double fullHigh = middle + FULL_PART * (high - middle);
    double centre = (TOP + BOTTOM) / 2;
    return String.join(
        " ",
        point(low, centre),
        point(fullLow, TOP),
        point(fullHigh, TOP),
        point(high, centre),
        point(fullHigh, BOTTOM),
        point(fullLow, BOTTOM));
  }

  /** Where the tick stands, in the same box. */
  public String tick() {
    return number(place(middle));
  }

  private String point(double value, double y) {
    return number(place(value)) + "," + number(y);
  }

  private double place(double value) {
    double part = (value - scale.low()) / (scale.high() - scale.low());
    return WIDTH * Math.max(0, Math.min(1, part));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
