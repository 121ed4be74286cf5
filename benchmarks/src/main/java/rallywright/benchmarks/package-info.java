/**
 * Measurements side by side with a reference in one run.
 *
 * <p>Start with {@link rallywright.benchmarks.OddsBesideDenseSolve}. Nothing here is part of the
 * tests.
 */
@NullMarked
package rallywright.benchmarks;

import org.jspecify.annotations.NullMarked;
