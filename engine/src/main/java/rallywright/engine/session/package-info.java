/**
 * A session as it runs: the events of the court and the state that follows from them.
 *
 * <p>Start with {@link rallywright.engine.session.CourtEvent} and {@link
 * rallywright.engine.session.SessionProgress}. Events are only ever added; nothing is changed or
 * taken away.
 */
@NullMarked
package rallywright.engine.session;

import org.jspecify.annotations.NullMarked;
