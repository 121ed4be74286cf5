package rallywright.engine.plan;

import java.util.List;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;

/**
 * Everything a plan is made from.
 *
 * @param attendees who will be there
 * @param drills the drills and warm-ups to choose from, in the catalogue's order
 * @param wish what the coach asks for
 * @param knowledge what is known of skills, drills and times
 * @param yardsticks the closed tests to choose from
 */
public record PlanProblem(
    List<Attendee> attendees,
    List<Drill> drills,
    SessionWish wish,
    PlanKnowledge knowledge,
    List<Yardstick> yardsticks) {

  /** Copies the lists. */
  public PlanProblem {
    attendees = List.copyOf(attendees);
    drills = List.copyOf(drills);
    yardsticks = List.copyOf(yardsticks);
  }

  /**
   * A problem without closed tests.
   *
   * @param attendees who will be there
   * @param drills the drills and warm-ups to choose from, in the catalogue's order
   * @param wish what the coach asks for
   * @param knowledge what is known of skills, drills and times
   */
  public PlanProblem(
      List<Attendee> attendees, List<Drill> drills, SessionWish wish, PlanKnowledge knowledge) {
    this(attendees, drills, wish, knowledge, List.of());
  }

  /**
   * A problem with first ideas of skills' worth, drills' gains and times.
   *
   * @param attendees who will be there
   * @param drills the drills and warm-ups to choose from
   * @param wish what the coach asks for
   * @return the problem
   */
  public static PlanProblem of(List<Attendee> attendees, List<Drill> drills, SessionWish wish) {
    return new PlanProblem(attendees, drills, wish, PlanKnowledge.firstIdeas(attendees));
  }

  /**
   * The same problem with another wish.
   *
   * @param other what the coach asks for
   * @return the changed problem
   */
  public PlanProblem withWish(SessionWish other) {
    return new PlanProblem(attendees, drills, other, knowledge, yardsticks);
  }

  /**
   * The same problem with closed tests to choose from.
   *
   * @param others the yardsticks
   * @return the changed problem
   */
  public PlanProblem withYardsticks(List<Yardstick> others) {
    return new PlanProblem(attendees, drills, wish, knowledge, others);
  }
}
