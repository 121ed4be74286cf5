/**
 * The court to scale: dimensions, zones, lanes and directions.
 *
 * <p>Start with {@link rallywright.engine.court.Court} and {@link rallywright.engine.court.Lane}.
 * Nothing here knows of scores or players.
 */
@NullMarked
package rallywright.engine.court;

import org.jspecify.annotations.NullMarked;
