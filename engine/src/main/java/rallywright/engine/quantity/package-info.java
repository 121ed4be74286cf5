/**
 * Values with units and ranges: chances, lengths and numbers that carry their source.
 *
 * <p>Start with {@link rallywright.engine.quantity.Probability}. Nothing here knows of courts,
 * drills or players.
 */
@NullMarked
package rallywright.engine.quantity;

import org.jspecify.annotations.NullMarked;
