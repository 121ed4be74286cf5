package rallywright.engine.skill;

import java.util.List;

/**
 * The spreads that the model believes in before it looks at a player: those of {@link SkillPrior},
 * and by how much the prior SDs of the club's effects and gains are multiplied.
 *
 * @param prior spreads of levels, groups, skills and weeks, and what a step of level is worth
 * @param effectScale multiplies the prior SD of every effect; 1 to start with
 * @param gainScale multiplies the prior SD of every gain; 1 to start with
 */
public record HyperParameters(SkillPrior prior, double effectScale, double gainScale) {
  /** The values to start with, each an assumption of this project. */
  public static final HyperParameters DEFAULT = new HyperParameters(SkillPrior.DEFAULT, 1, 1);

  /** How many numbers there are. */
  static final int COUNT = 7;

  /** Checks the ranges; the checks are written so that NaN fails them. */
  public HyperParameters {
    requireScale("effects", effectScale);
    requireScale("gains", gainScale);
  }

  private static void requireScale(String what, double scale) {
    if (!(scale > 0 && scale < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The scale of the " + what + " (" + scale + ") must be above 0. Maybe 1.");
    }
  }

  /** The logarithms, in the order σ_L, σ_G, σ_S, τ, β, scale of effects, scale of gains. */
  double[] logs() {
    return new double[] {
      Math.log(prior.levelSd()),
      Math.log(prior.groupSd()),
      Math.log(prior.skillSd()),
      Math.log(prior.weeklySd()),
      Math.log(prior.levelStep()),
      Math.log(effectScale),
      Math.log(gainScale)
    };
  }

  /** From the logarithms in the same order. */
  static HyperParameters ofLogs(double[] logs, double effectSd) {
    return new HyperParameters(
        new SkillPrior(
            Math.exp(logs[0]),
            Math.exp(logs[1]),
            Math.exp(logs[2]),
            Math.exp(logs[3]),
            Math.exp(logs[4]),
            effectSd),
        Math.exp(logs[5]),
        Math.exp(logs[6]));
  }

  /**
   * The club with the prior SDs of its effects and gains multiplied.
   *
   * @param club the club with the SDs to start with
   * @return the club as the model reads it
   */
  public Club applyTo(Club club) {
    return new Club(
        club.skills(),
        club.entrants(),
        scaled(club.effects(), effectScale),
        scaled(club.gains(), gainScale));
  }

  private static List<SharedEffect> scaled(List<SharedEffect> effects, double scale) {
    return effects.stream()
        .map(each -> new SharedEffect(each.name(), each.mean(), each.sd() * scale))
        .toList();
  }
}
