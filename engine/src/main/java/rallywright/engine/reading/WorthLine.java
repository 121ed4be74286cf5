package rallywright.engine.reading;

import java.util.Locale;
import rallywright.engine.drill.Skill;
import rallywright.engine.skill.Estimate;

/**
 * What a skill is worth to a player, for the coach.
 *
 * @param skill the skill
 * @param now its estimate today, in logits
 * @param gamesIn100 games to 11 won in 100 against an even side for a small step (0.2 logits, about
 *     one rally in twenty of those that turn on the skill)
 * @param gamesIn100PerHour games won in 100 for an hour of practice on it alone, in the first ideas
 *     about what practice brings
 */
public record WorthLine(Skill skill, Estimate now, double gamesIn100, double gamesIn100PerHour) {

  /**
   * The line in words.
   *
   * @return one sentence
   */
  public String sentence() {
    return String.format(
        Locale.ROOT,
        "A small step in the %s is worth about %.1f more games in 100 against an even side.",
        skill.words(),
        gamesIn100);
  }
}
