/**
 * How long games, blocks and sessions take, with their spread.
 *
 * <p>Start with {@link rallywright.engine.pace.RallyPace} for one rally and {@link
 * rallywright.engine.pace.SessionTime} for the whole. Nothing here reads a clock; recorded times
 * come in as numbers.
 */
@NullMarked
package rallywright.engine.pace;

import org.jspecify.annotations.NullMarked;
