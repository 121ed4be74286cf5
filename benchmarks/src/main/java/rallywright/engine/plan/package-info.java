/**
 * Plans measured beside a solver that proves its optimum; in the package of the plan, because it
 * reads the search's own numbers.
 *
 * <p>Start with {@link rallywright.engine.plan.SessionsBesideCpSat}. Nothing here is part of the
 * program that a coach runs.
 */
@NullMarked
package rallywright.engine.plan;

import org.jspecify.annotations.NullMarked;
