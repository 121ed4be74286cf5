package rallywright.engine.practice;

/**
 * How hard a player felt a whole session to be.
 *
 * <p>The scale of ten with names (category ratio, CR-10) as used for the session rating of
 * perceived exertion: C. Foster et al., A new approach to monitoring exercise training, Journal of
 * Strength and Conditioning Research 15(1):109–115 (2001). The names are from memory. Asked about
 * half an hour after; answers stay much the same from a minute to two weeks after (C. Foster et
 * al., International Journal of Sports Physiology and Performance 16(5):612–621, 2021).
 *
 * @param value 0 (rest) to 10 (as hard as it gets)
 */
public record EffortRating(int value) {

  /** The highest rating. */
  public static final int MOST = 10;

  /** Checks the range. */
  public EffortRating {
    if (value < 0 || value > MOST) {
      throw new IllegalArgumentException("The effort (" + value + ") must be from 0 to 10.");
    }
  }

  /**
   * The name of the rating.
   *
   * @return lower-case words
   */
  public String words() {
    return switch (value) {
      case 0 -> "rest";
      case 1 -> "very easy";
      case 2 -> "easy";
      case 3 -> "moderate";
      case 4 -> "somewhat hard";
      case 5, 6 -> "hard";
      case 7, 8, 9 -> "very hard";
      default -> "as hard as it gets";
    };
  }
}
