/**
 * Pages for players, groups and venues.
 *
 * <p>Start with {@code PlayerPages}. Results are shown elsewhere; notes and limits are shown to the
 * coach alone.
 */
@NullMarked
package rallywright.web.players;

import org.jspecify.annotations.NullMarked;
