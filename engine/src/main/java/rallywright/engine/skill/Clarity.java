package rallywright.engine.skill;

/**
 * How much a rally tells about skill on a day: wind and a blinding sun bring luck into it. The edge
 * of a rally is multiplied by this share, so that all chances move toward one half.
 *
 * @param share above 0 and at most 1; 1 on a calm day
 */
public record Clarity(double share) {
  /** A rally tells all that it can. */
  public static final Clarity FULL = new Clarity(1);

  /** Checks the range; the check is written so that NaN fails it. */
  public Clarity {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException(
          "The clarity (" + share + ") must lie above 0 and not above 1. Maybe 0.8, for wind.");
    }
  }

  /**
   * Two disturbances together.
   *
   * @param other the other one
   * @return the product of both shares
   */
  public Clarity and(Clarity other) {
    return new Clarity(share * other.share);
  }
}
