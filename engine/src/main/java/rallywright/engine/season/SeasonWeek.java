package rallywright.engine.season;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.Coverage;
import rallywright.engine.plan.PlanProblem;
import rallywright.engine.plan.Requests;
import rallywright.engine.plan.SessionWish;
import rallywright.engine.plan.YardstickWish;
import rallywright.engine.practice.SkillWorth;

/**
 * One week of a season.
 *
 * @param number which one, from 1
 * @param phase the part of the season it belongs to
 * @param focus the skills that stand in front, the most urgent first
 * @param test whether a test is due
 */
public record SeasonWeek(int number, Phase phase, List<Skill> focus, Test test) {

  /** How much more the skills in front count when the week's session is planned. Assumption. */
  public static final double FOCUS = 1.6;

  /** Whether a test is due. */
  public enum Test {
    /** A closed test stands in this week's session. */
    DUE,
    /** No test this week. */
    NOT_DUE
  }

  /** Copies the list. */
  public SeasonWeek {
    focus = List.copyOf(focus);
  }

  /**
   * The week's session made concrete: what is known of the players by then, with this week's skills
   * in front.
   *
   * @param problem the problem as it stands on the day
   * @return the problem to plan
   */
  public PlanProblem concrete(PlanProblem problem) {
    SessionWish wish = problem.wish();
    Requests requests = wish.requests();
    if (test == Test.DUE) {
      requests = requests.withYardsticks(new YardstickWish.Every(1, 0));
    }
    Coverage coverage = phase == Phase.BROAD ? Coverage.FULL : Coverage.NEEDS;
    SkillWorth focused = inFront(problem.knowledge().worth(), focus);
    return new PlanProblem(
        problem.attendees(),
        problem.drills(),
        wish.withCoverage(coverage).withRequests(requests),
        problem.knowledge().withWorth(focused),
        problem.yardsticks());
  }

  /**
   * What skills are worth when some stand in front.
   *
   * @param usual what they are worth usually
   * @param focus the skills in front
   * @return the worth of those in front times {@link #FOCUS}
   */
  public static SkillWorth inFront(SkillWorth usual, List<Skill> focus) {
    Set<Skill> front = Set.copyOf(focus);
    return front.isEmpty()
        ? usual
        : player -> {
          Map<Skill, Double> worth = new EnumMap<>(usual.of(player));
          front.forEach(skill -> worth.computeIfPresent(skill, (same, value) -> value * FOCUS));
          return worth;
        };
  }

  /**
   * The week in words.
   *
   * @return for example "Week 3: drop and reset in front. Everything once, the weakest in front. A
   *     test is due."
   */
  public String words() {
    String skills = focus.stream().map(Skill::words).collect(Collectors.joining(" and "));
    String how = phase.words().substring(0, 1).toUpperCase(Locale.ROOT);
    return "Week %d: %s in front. %s%s.%s"
        .formatted(
            number,
            skills,
            how,
            phase.words().substring(1),
            test == Test.DUE ? " A test is due." : "");
  }
}
