/**
 * What stands on the card for cones and tape.
 *
 * <p>Start with {@link rallywright.paper.card.CardView}. Plain texts for the template; nothing is
 * worked out here.
 */
@NullMarked
package rallywright.paper.card;

import org.jspecify.annotations.NullMarked;
