/**
 * Whether the spreads of the skill model cover what they say: whole clubs are drawn from what the
 * model believes before the first score, play a season, and are read by the model.
 *
 * <p>Start with {@link rallywright.engine.calibration.ClubCheck}, which does this for one club;
 * {@link rallywright.engine.calibration.Coverage} and {@link
 * rallywright.engine.calibration.RankHistogram} sum up many. Nothing here uses the inside of the
 * model, changes it, or decides what is good enough.
 */
@NullMarked
package rallywright.engine.calibration;

import org.jspecify.annotations.NullMarked;
