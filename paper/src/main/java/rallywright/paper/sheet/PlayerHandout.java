package rallywright.paper.sheet;

import java.util.List;

/**
 * What stands on the page for a player.
 *
 * @param name the player's name as it may be shown
 * @param date the day on which the page was made, in words
 * @param demo the sentence that says that all of it is invented, or empty
 * @param scale what the bars are measured on
 * @param skills the skills, a sentence and a bar each
 * @param games the latest games with what was to be expected
 * @param next what comes next and why, a sentence each
 */
public record PlayerHandout(
    String name,
    String date,
    String demo,
    Scale scale,
    List<SkillLine> skills,
    List<GameLine> games,
    List<String> next) {

  /**
   * The ends of the scale in words.
   *
   * @param left the left end, for example "wins 2 rallies in 10 against an even partner"
   * @param right the right end
   */
  public record Scale(String left, String right) {}

  /**
   * One skill.
   *
   * @param skill its name
   * @param words what is known, as one sentence
   * @param bar the estimate
   */
  public record SkillLine(String skill, String words, IntervalBar bar) {}

  /**
   * One game.
   *
   * @param date the day in words
   * @param game the drill and the opponent's first name
   * @param score the score, own points first
   * @param expected the score to be expected, in words
   */
  public record GameLine(String date, String game, String score, String expected) {}

  /** Copies the lists. */
  public PlayerHandout {
    skills = List.copyOf(skills);
    games = List.copyOf(games);
    next = List.copyOf(next);
  }
}
