package rallywright.web.progress;

import java.util.Locale;

/** The line of weeks with the two handles, in a box of 640 × 72. */
public final class Timeline {

  /** Where the first week stands. */
  public static final double LEFT = 20;

  /** Where the last week stands. */
  public static final double RIGHT = 620;

  private Timeline() {}

  /** Where a part of the way from the first to the last week stands. */
  public static String x(double part) {
    return String.format(Locale.ROOT, "%.1f", LEFT + part * (RIGHT - LEFT));
  }
}
