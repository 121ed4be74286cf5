package rallywright.engine.skill;

/**
 * Minutes that a player spent in one drill in one session. They push the player's skills from that
 * week to the next: θ(week + 1) = θ(week) + effective minutes × γ × load + a random step, where γ,
 * what an effective minute of the drill brings, is the same for the whole club and learned.
 *
 * @param week the week, from 0
 * @param player number of the player
 * @param gain number of the drill's γ among the club's gains
 * @param load how the drill's work is shared out to the skills in the player's roles; sums to 1
 * @param minutes minutes played, 0 or more
 */
public record Practice(int week, int player, int gain, Weights load, double minutes)
    implements Evidence {

  /**
   * The saturation M in M (1 − e^(−m/M)), in minutes: after 25 minutes of one drill in a session 63
   * in 100 of what it can bring are reached. Assumption of this project.
   */
  public static final double SATURATION_MINUTES = 25;

  /** Checks the range; the check is written so that NaN fails it. */
  public Practice {
    if (!(minutes >= 0 && minutes < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The minutes (" + minutes + ") must be 0 or more. Maybe 15, for a quarter of an hour.");
    }
  }

  /**
   * What the first minutes of a drill count for: they bring most.
   *
   * @param minutes minutes of one drill in one session, 0 or more
   * @return M (1 − e^(−m/M)), at most {@value #SATURATION_MINUTES}
   */
  public static double effective(double minutes) {
    return -SATURATION_MINUTES * Math.expm1(-minutes / SATURATION_MINUTES);
  }

  /**
   * The effective minutes.
   *
   * @return from 0 to {@value #SATURATION_MINUTES}
   */
  public double effectiveMinutes() {
    return effective(minutes);
  }
}
