/**
 * Planning a session: the wish, the plan, and changing it by hand.
 *
 * <p>Start with {@link rallywright.web.plan.PlanPages}. The search is the engine's; nothing that
 * was played is changed here.
 */
@NullMarked
package rallywright.web.plan;

import org.jspecify.annotations.NullMarked;
