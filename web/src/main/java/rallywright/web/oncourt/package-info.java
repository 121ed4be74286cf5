/**
 * The session on court: the phone page, the events that it sends, the state that it reads, and the
 * keys that open it.
 *
 * <p>Start with {@link rallywright.web.oncourt.SessionDesk}, which joins plan, drills and events,
 * and {@link rallywright.web.oncourt.CourtEvents}. Nothing here shows more of a person than the
 * first name.
 */
@NullMarked
package rallywright.web.oncourt;

import org.jspecify.annotations.NullMarked;
