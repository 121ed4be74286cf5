/**
 * Court drawings and printed pages.
 *
 * <p>Start with {@link rallywright.paper.CourtSheet}. It never reads the store.
 */
@NullMarked
package rallywright.paper;

import org.jspecify.annotations.NullMarked;
