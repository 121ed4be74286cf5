package rallywright.engine.season;

/**
 * What a coach wishes for the weeks ahead.
 *
 * @param weeks how many weeks, 1 to 52
 * @param yardsticksEvery a test stands in every so many weeks, 1 to 52
 */
public record SeasonWish(int weeks, int yardsticksEvery) {

  /** The longest season that is planned. */
  public static final int MOST_WEEKS = 52;

  /** Checks the ranges. */
  public SeasonWish {
    if (weeks < 1 || weeks > MOST_WEEKS) {
      throw new IllegalArgumentException(
          "The number of weeks (%d) must be from 1 to 52. Maybe 8.".formatted(weeks));
    }
    if (yardsticksEvery < 1 || yardsticksEvery > MOST_WEEKS) {
      throw new IllegalArgumentException(
          "A test every %d weeks: it must be every 1 to 52. Maybe 4.".formatted(yardsticksEvery));
    }
  }
}
