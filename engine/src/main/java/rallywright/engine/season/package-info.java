/**
 * Weeks ahead: which skills stand in front when, and when a test is due.
 *
 * <p>Start with {@link rallywright.engine.season.Season}. Nothing here chooses drills or players:
 * each session is planned when its day comes, from what is known by then.
 */
@NullMarked
package rallywright.engine.season;

import org.jspecify.annotations.NullMarked;
