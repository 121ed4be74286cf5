/**
 * What the club's sessions say: scores become evidence, evidence becomes statements about players.
 *
 * <p>Start with {@link rallywright.engine.reading.ClubReading}. Nothing is stored or drawn here,
 * and the model itself is the skill package's.
 */
@NullMarked
package rallywright.engine.reading;

import org.jspecify.annotations.NullMarked;
