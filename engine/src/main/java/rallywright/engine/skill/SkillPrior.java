package rallywright.engine.skill;

/**
 * What the model believes before the first score, all in logits of a rally chance (one logit is an
 * edge of about 73 to 27). θ of a player in the first week has mean β (level − 3.5)/0.5 in every
 * skill and covariance σ_L² 11ᵀ + σ_G² (same group) + σ_S² I; each week adds τ² to the variance of
 * every skill. Where the level is not known the mean is 0 and the covariance gains β² 11ᵀ, as if
 * the level were known to about half a step.
 *
 * @param levelSd σ_L: how far players of one level differ in all skills together; above 0 or 0
 * @param groupSd σ_G: how far a group of skills of one player departs from the player; 0 or more
 * @param skillSd σ_S: how far a single skill departs from its group; above 0
 * @param weeklySd τ: how far a skill wanders in one week; above 0
 * @param levelStep β: what half a step of level is worth
 * @param effectSd how far the advantage of a role, or the difficulty of a yardstick, may lie from
 *     its prior mean; 0 or more
 */
public record SkillPrior(
    double levelSd,
    double groupSd,
    double skillSd,
    double weeklySd,
    double levelStep,
    double effectSd) {

  /** The level at which the prior mean is 0. */
  public static final double MIDDLE_LEVEL = 3.5;

  /** One step of level, as coaches give it. */
  public static final double STEP_OF_LEVEL = 0.5;

  /**
   * The values to start with: σ_L 0.5, σ_G 0.25, σ_S 0.3, τ 0.12 a week, β 0.45, effects 0.4. Each
   * is an assumption of this project, not evidence; to be replaced by marginal likelihood once a
   * club has enough games.
   */
  public static final SkillPrior DEFAULT = new SkillPrior(0.5, 0.25, 0.3, 0.12, 0.45, 0.4);

  /** Checks the ranges; the checks are written so that NaN fails them. */
  public SkillPrior {
    requireFrom(levelSd >= 0, "level SD", levelSd);
    requireFrom(groupSd >= 0, "group SD", groupSd);
    requireFrom(skillSd > 0, "skill SD", skillSd);
    requireFrom(weeklySd > 0, "weekly SD", weeklySd);
    requireFrom(effectSd >= 0, "effect SD", effectSd);
    requireFrom(Math.abs(levelStep) <= Double.MAX_VALUE, "worth of a level step", levelStep);
  }

  private static void requireFrom(boolean holds, String name, double value) {
    if (!(holds && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The "
              + name
              + " ("
              + value
              + ") is out of range: SDs are 0 or more, those of a single"
              + " skill and of a week above 0. Maybe try "
              + "0.01 in place of 0.");
    }
  }

  /** Prior mean of every skill of an entrant in the first week. */
  double mean(Entrant entrant) {
    return entrant.level().isPresent()
        ? levelStep * (entrant.level().getAsDouble() - MIDDLE_LEVEL) / STEP_OF_LEVEL
        : 0;
  }

  /** Prior covariance of the skills of an entrant, some weeks after the first. */
  double[][] covariance(Entrant entrant, SkillGroups groups, int weeksLater) {
    int skills = groups.skills();
    double common = levelSd * levelSd + (entrant.level().isPresent() ? 0 : levelStep * levelStep);
    double[][] covariance = new double[skills][skills];
    for (int i = 0; i < skills; i++) {
      for (int j = 0; j < skills; j++) {
        covariance[i][j] = common + (groups.together(i, j) ? groupSd * groupSd : 0);
      }
      covariance[i][i] += skillSd * skillSd + weeklySd * weeklySd * weeksLater;
    }
    return covariance;
  }
}
