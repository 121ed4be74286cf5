/**
 * The people and places of a club: players, groups and venues, as plain values.
 *
 * <p>Start with {@link rallywright.engine.club.Player}. Nothing here is stored or drawn.
 */
@NullMarked
package rallywright.engine.club;

import org.jspecify.annotations.NullMarked;
