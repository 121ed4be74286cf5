package rallywright.engine.skill;

/**
 * Something that is the same for all players and that the club's scores can teach: the advantage of
 * a role in an uneven drill, what a direction adds to it, the difficulty of a yardstick. In logits.
 *
 * @param name for people
 * @param mean prior mean
 * @param sd prior SD, 0 or more; 0 means that the value is known
 */
public record SharedEffect(String name, double mean, double sd) {
  /** Checks the ranges; the checks are written so that NaN fails them. */
  public SharedEffect {
    if (!(Math.abs(mean) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The prior mean (" + mean + ") of " + name + " must be a number. Maybe 0.");
    }
    if (!(sd >= 0 && sd < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The prior SD (" + sd + ") of " + name + " must be 0 (known) or above. Maybe 0.4.");
    }
  }

  /**
   * Whether scores can teach it.
   *
   * @return true if the prior SD is above 0
   */
  public boolean isLearned() {
    return sd > 0;
  }
}
