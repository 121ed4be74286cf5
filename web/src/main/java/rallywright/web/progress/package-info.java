/**
 * Pages that show what the scores say: the club at a glance and each player.
 *
 * <p>Start with {@link rallywright.web.progress.ProgressPages}. Nothing is estimated here; that is
 * the engine's reading package.
 */
@NullMarked
package rallywright.web.progress;

import org.jspecify.annotations.NullMarked;
