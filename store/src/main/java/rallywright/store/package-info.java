/**
 * Keeps the club in one file, or in PostgreSQL: the only package that knows SQL.
 *
 * <p>Start with {@link rallywright.store.ClubStore}. It never computes statistics.
 */
@NullMarked
package rallywright.store;

import org.jspecify.annotations.NullMarked;
