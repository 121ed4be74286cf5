/**
 * What a drill is: skills, roles, positions, rule, scoring, length and cues, as plain values.
 *
 * <p>Start with {@link rallywright.engine.drill.Drill}. Reading drill files is not done here.
 */
@NullMarked
package rallywright.engine.drill;

import org.jspecify.annotations.NullMarked;
