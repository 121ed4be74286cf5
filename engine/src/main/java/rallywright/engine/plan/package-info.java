/**
 * The session as a plan: blocks, games, lanes and the reason for each.
 *
 * <p>Start with {@link rallywright.engine.plan.SessionPlan}. What happened on court is kept in the
 * session package, not here.
 */
@NullMarked
package rallywright.engine.plan;

import org.jspecify.annotations.NullMarked;
