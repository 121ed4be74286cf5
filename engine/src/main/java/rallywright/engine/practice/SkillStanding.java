package rallywright.engine.practice;

import java.util.List;
import rallywright.engine.drill.Skill;

/**
 * What is known of one skill of one player today.
 *
 * @param skill the skill
 * @param mean the estimate in logits; 0 is a player of level 3.5
 * @param sd its standard deviation in logits, above 0
 * @param rallies how many rallies it rests on, 0 or more
 * @param minutesByWeek minutes practised, this week first, then a week ago, and so on; each 0 or
 *     more; empty where nothing was recorded
 */
public record SkillStanding(
    Skill skill, double mean, double sd, int rallies, List<Double> minutesByWeek) {

  /** Checks the ranges, so that NaN fails, and copies the list. */
  public SkillStanding {
    if (!(Double.isFinite(mean) && sd > 0 && sd < Double.POSITIVE_INFINITY && rallies >= 0)) {
      throw new IllegalArgumentException(
          "The standing in %s needs a finite mean (%s), a spread (%s) above 0 and rallies (%d) of 0"
                  .formatted(skill.words(), mean, sd, rallies)
              + " or more.");
    }
    for (double minutes : minutesByWeek) {
      if (!(minutes >= 0 && minutes < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "The minutes of a week (%s) in %s must be 0 or more."
                .formatted(minutes, skill.words()));
      }
    }
    minutesByWeek = List.copyOf(minutesByWeek);
  }

  /**
   * How many weeks ago the skill was last practised.
   *
   * @return 0 for this week; the number of weeks on record where it never was
   */
  public int weeksSincePractice() {
    int week = 0;
    while (week < minutesByWeek.size() && minutesByWeek.get(week) == 0) {
      week++;
    }
    return week;
  }
}
