package rallywright.engine.skill;

/**
 * Rallies that might be played, to ask beforehand what they would tell.
 *
 * @param edge the logit of the chance that one side wins such a rally
 * @param rallies how many are expected, 0 or more
 */
public record PlannedRallies(SkillSum edge, double rallies) {
  /** Checks the range; the check is written so that NaN fails it. */
  public PlannedRallies {
    if (!(rallies >= 0 && rallies < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The number of rallies (" + rallies + ") must be 0 or more. Maybe 8, for a game to 5.");
    }
  }
}
