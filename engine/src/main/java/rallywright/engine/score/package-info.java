/**
 * Scoring formats as named values, and a game as an immutable state that one rally turns into the
 * next.
 *
 * <p>Start with {@link rallywright.engine.score.GameFormat} and {@link
 * rallywright.engine.score.GameState}; {@link rallywright.engine.score.GameLog} folds the events of
 * a game, undo included. Nothing here computes a chance, keeps a clock or knows a player's name.
 */
@NullMarked
package rallywright.engine.score;

import org.jspecify.annotations.NullMarked;
