/**
 * What a player should practise and what minutes of it bring.
 *
 * <p>Start with {@link rallywright.engine.practice.Needs}. Drills are not chosen here; that is the
 * plan's work.
 */
@NullMarked
package rallywright.engine.practice;

import org.jspecify.annotations.NullMarked;
