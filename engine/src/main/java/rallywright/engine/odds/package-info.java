/**
 * From the chance of one rally to a game: exact chances, scores and lengths, without simulation.
 *
 * <p>Start with {@link rallywright.engine.odds.GameOdds}, given a format and {@link
 * rallywright.engine.odds.RallyChances}; {@link rallywright.engine.odds.HeadStartSearch} finds what
 * makes a game fair. Nothing here draws a random number, cuts off a tie-break or estimates a chance
 * from results.
 */
@NullMarked
package rallywright.engine.odds;

import org.jspecify.annotations.NullMarked;
