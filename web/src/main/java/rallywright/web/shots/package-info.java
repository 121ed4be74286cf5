/**
 * Pages on what a shot allows: the court in plan and side view, a shot to set up, its window, where
 * to aim; straight against cross-court; the card for cones and tape.
 *
 * <p>Start with {@link rallywright.web.shots.ShotPages}. The engine works everything out; the
 * browser only draws. Nothing is stored here.
 */
@NullMarked
package rallywright.web.shots;

import org.jspecify.annotations.NullMarked;
