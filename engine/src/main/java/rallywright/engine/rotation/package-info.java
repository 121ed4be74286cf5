/**
 * Who plays whom, where and when, round after round; ladders, round robins and standings.
 *
 * <p>Start with {@link rallywright.engine.rotation.RotationSearch}. It never looks at a clock: who
 * waits for an answer counts the time and stops the search.
 */
@NullMarked
package rallywright.engine.rotation;

import org.jspecify.annotations.NullMarked;
