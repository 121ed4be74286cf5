package rallywright.engine.practice;

import java.util.List;
import rallywright.engine.skill.Practice;

/**
 * What minutes of practice count for: the first minutes of a drill bring most, and what was
 * practised weeks ago fades.
 */
public final class PracticeMinutes {

  /**
   * The saturation M in M (1 - e^(-m/M)), in minutes: after 25 minutes of one drill in a session 63
   * in 100 of what it can bring are reached. Assumption of this project.
   */
  public static final double SATURATION_MINUTES = Practice.SATURATION_MINUTES;

  /** After how many weeks half of a practice has faded. Assumption of this project. */
  public static final double HALF_LIFE_WEEKS = 4;

  private PracticeMinutes() {}

  /**
   * Effective minutes of one drill in one session.
   *
   * @param minutes played, 0 or more
   * @return M (1 - e^(-m/M)), at most {@value #SATURATION_MINUTES}
   */
  public static double effective(double minutes) {
    return Practice.effective(minutes);
  }

  /**
   * How fresh a skill is.
   *
   * @param minutesByWeek minutes practised, this week first
   * @param halfLifeWeeks after how many weeks half has faded, above 0
   * @return from 0 (nothing left) to nearly 1 (practised a lot, lately)
   * @throws IllegalArgumentException if the half-life is not above 0
   */
  public static double freshness(List<Double> minutesByWeek, double halfLifeWeeks) {
    if (!(halfLifeWeeks > 0)) {
      throw new IllegalArgumentException(
          "The half-life (%s weeks) must be above 0. Maybe %s."
              .formatted(halfLifeWeeks, HALF_LIFE_WEEKS));
    }
    double left = 0;
    for (int week = 0; week < minutesByWeek.size(); week++) {
      left += minutesByWeek.get(week) * Math.exp(-Math.log(2) * week / halfLifeWeeks);
    }
    return -Math.expm1(-left / SATURATION_MINUTES);
  }
}
