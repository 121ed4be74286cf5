/**
 * The sessions of the club: the list, one session with its blocks and what came of them, the code
 * for phones, and scores typed in from paper.
 *
 * <p>Start with {@link rallywright.web.sessions.SessionPages}. Planning is done elsewhere.
 */
@NullMarked
package rallywright.web.sessions;

import org.jspecify.annotations.NullMarked;
