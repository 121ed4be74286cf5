package rallywright.engine.plan;

/** The answer to a change by hand. */
public sealed interface PlanEdit {

  /**
   * The plan was changed.
   *
   * @param plan the new plan
   * @param check what holds of it
   */
  record Changed(SessionPlan plan, PlanCheck check) implements PlanEdit {}

  /**
   * The change is not possible; the plan stays as it is.
   *
   * @param sentence what was seen, what is allowed, what to try
   */
  record Refused(String sentence) implements PlanEdit {}
}
