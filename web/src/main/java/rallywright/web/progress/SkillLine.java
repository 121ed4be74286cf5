package rallywright.web.progress;

import rallywright.engine.drill.Skill;
import rallywright.engine.reading.SkillReading;
import rallywright.web.page.Estimate;

/**
 * One skill on a player's page.
 *
 * @param name the skill in words
 * @param enough whether more can be said than "too early to tell"
 * @param estimate the bar with its sentence
 * @param basis what the estimate rests on, a sentence
 * @param change how it changed between the two dates, empty where there is nothing to compare
 * @param chart the weeks as a picture
 */
public record SkillLine(
    String name, boolean enough, Estimate estimate, String basis, String change, SkillChart chart) {

  /** The scale that all skills share, so that bars can be compared. */
  static final Estimate.Scale SHARES = new Estimate.Scale(0.1, 0.9, "1 in 10", "9 in 10");

  static SkillLine of(SkillReading reading, String change) {
    Skill skill = reading.skill();
    return new SkillLine(
        SkillWords.capital(skill.words()),
        reading.enough(),
        new Estimate(
            SHARES,
            reading.lowShare(),
            reading.share(),
            reading.highShare(),
            SkillWords.standing(reading)),
        SkillWords.basis(reading),
        reading.enough() ? change : "",
        SkillChart.of(reading));
  }
}
