/**
 * Pages for players, groups and venues.
 *
 * <p>Start with {@link rallywright.web.players.PlayerPages}. Results are shown elsewhere.
 */
@NullMarked
package rallywright.web.players;

import org.jspecify.annotations.NullMarked;
