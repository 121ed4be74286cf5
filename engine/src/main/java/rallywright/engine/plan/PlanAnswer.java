package rallywright.engine.plan;

import java.util.List;

/** What the planner answers: a plan, or sentences that say what to change. */
public sealed interface PlanAnswer {

  /**
   * A plan.
   *
   * @param plan the session
   * @param check its clock, coverage, benefit and whatever it does not keep to
   */
  record Planned(SessionPlan plan, PlanCheck check) implements PlanAnswer {}

  /**
   * The wish cannot be met.
   *
   * @param sentences what was seen, what is allowed, what to try; one or more
   */
  record Refused(List<String> sentences) implements PlanAnswer {

    /** Copies the list. */
    public Refused {
      sentences = List.copyOf(sentences);
    }
  }
}
