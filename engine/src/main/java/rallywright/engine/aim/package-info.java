/**
 * What a shot allows, as a coach asks for it: the usual shots of the trade, where to aim one, how
 * often it comes off, and where the cones go; with the words that page, paper and program share.
 *
 * <p>Start with {@link rallywright.engine.aim.ShotSetting} and {@link
 * rallywright.engine.aim.ShotStudy}. Flights are those of {@link rallywright.engine.flight};
 * nothing here knows of a club's people.
 */
@NullMarked
package rallywright.engine.aim;

import org.jspecify.annotations.NullMarked;
