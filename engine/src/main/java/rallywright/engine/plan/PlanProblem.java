package rallywright.engine.plan;

import java.util.List;
import rallywright.engine.drill.Drill;

/**
 * Everything a plan is made from.
 *
 * @param attendees who will be there
 * @param drills the drills and warm-ups to choose from, in the catalogue's order
 * @param wish what the coach asks for
 * @param knowledge what is known of skills, drills and times
 */
public record PlanProblem(
    List<Attendee> attendees, List<Drill> drills, SessionWish wish, PlanKnowledge knowledge) {

  /** Copies the lists. */
  public PlanProblem {
    attendees = List.copyOf(attendees);
    drills = List.copyOf(drills);
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
    return new PlanProblem(attendees, drills, other, knowledge);
  }
}
