package rallywright.engine.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.Attendee;
import rallywright.engine.practice.Needs;
import rallywright.engine.practice.PracticeMinutes;
import rallywright.engine.practice.SkillWorth;

/**
 * A plan for weeks ahead.
 *
 * <p><b>Card.</b> In: who will be there, what skills are worth, how many weeks, how often a test.
 * Out: for each week its phase, the skills in front and whether a test is due. Method: each week
 * takes the skills whose need, summed over the players, is largest; a skill that stood in front
 * leaves part of its need behind ({@link #LEFT_AFTER_A_WEEK}), and what is not touched gains
 * urgency again with the half-life of forgetting. Limits: it says what to look at when, not how far
 * anybody will come; made anew after any session it follows what was learned.
 */
public final class Season {

  /** How many skills stand in front in one week. Assumption of this project. */
  public static final int IN_FRONT = 2;

  /** What is left of a need after a week in front. Assumption of this project. */
  public static final double LEFT_AFTER_A_WEEK = 0.6;

  private final List<SeasonWeek> weeks;

  private Season(List<SeasonWeek> weeks) {
    this.weeks = List.copyOf(weeks);
  }

  /**
   * A season.
   *
   * @param players who will be there, one or more
   * @param worth what a skill is worth to a player
   * @param wish how long and how often a test
   * @return the weeks
   * @throws IllegalArgumentException if nobody is named
   */
  public static Season of(List<Attendee> players, SkillWorth worth, SeasonWish wish) {
    if (players.isEmpty()) {
      throw new IllegalArgumentException(
          "A season needs a player, but nobody was chosen. Maybe choose a group.");
    }
    Map<Skill, Double> needs = needs(players, worth);
    Map<Skill, Double> left = new EnumMap<>(needs);
    List<SeasonWeek> weeks = new ArrayList<>();
    for (int number = 1; number <= wish.weeks(); number++) {
      List<Skill> focus =
          left.keySet().stream()
              .sorted(Comparator.comparingDouble((Skill skill) -> -valueOf(left, skill)))
              .limit(IN_FRONT)
              .toList();
      SeasonWeek.Test test =
          number % wish.yardsticksEvery() == 0 ? SeasonWeek.Test.DUE : SeasonWeek.Test.NOT_DUE;
      weeks.add(new SeasonWeek(number, Phase.of(number, wish.weeks()), focus, test));
      pass(needs, left, focus);
    }
    return new Season(weeks);
  }

  private static double valueOf(Map<Skill, Double> needs, Skill skill) {
    return needs.getOrDefault(skill, 0.0);
  }

  /** A week goes by: what was in front is less needed, the rest comes back as it is forgotten. */
  private static void pass(Map<Skill, Double> needs, Map<Skill, Double> left, List<Skill> focus) {
    double kept = Math.exp(-Math.log(2) / PracticeMinutes.HALF_LIFE_WEEKS);
    left.replaceAll(
        (skill, value) -> {
          double full = valueOf(needs, skill);
          double forgotten = full - (full - value) * kept;
          return focus.contains(skill) ? forgotten * LEFT_AFTER_A_WEEK : forgotten;
        });
  }

  private static Map<Skill, Double> needs(List<Attendee> players, SkillWorth worth) {
    Map<Skill, Double> sums = new EnumMap<>(Skill.class);
    for (Attendee player : players) {
      Needs needs = Needs.of(player.standing(), worth);
      for (Skill skill : Skill.values()) {
        sums.merge(skill, player.weight() * needs.of(skill).value(), Double::sum);
      }
    }
    return sums;
  }

  /**
   * The weeks.
   *
   * @return in order
   */
  public List<SeasonWeek> weeks() {
    return weeks;
  }
}
