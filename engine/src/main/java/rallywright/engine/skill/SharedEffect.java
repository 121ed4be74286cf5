package rallywright.engine.skill;

/**
 * Something that is the same for all players and that the club's scores can teach: the advantage of
 * a role in an uneven drill, what a direction adds to it, the difficulty of a yardstick (in
 * logits), what an effective minute of a drill brings (in logits a minute).
 *
 * @param name for people
 * @param mean prior mean
 * @param sd prior SD, 0 or more; 0 means that the value is known
 */
public record SharedEffect(String name, double mean, double sd) {
  /**
   * What an effective minute of a drill is thought to bring before anything is known, in logits:
   * 0.0005 ± 0.0005. Ten sessions of 25 minutes of one skill would lift it by about 0.08 logits, or
   * two rallies in a hundred. No source gives such a number: an assumption of this project.
   */
  public static final double GAIN_MEAN = 0.0005;

  /** How unsure that is, in logits a minute; an assumption of this project. */
  public static final double GAIN_SD = 0.0005;

  /**
   * The gain per effective minute of a drill of which nothing is known yet.
   *
   * @param name the drill's name
   * @return the effect with the usual prior
   */
  public static SharedEffect gain(String name) {
    return new SharedEffect(name, GAIN_MEAN, GAIN_SD);
  }

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
