/**
 * The calibration of the skill model at length: many clubs drawn from the prior, tables and figures
 * of what the stated intervals held.
 *
 * <p>Start with {@link rallywright.benchmarks.calibration.CalibrateClubs}, which `calibrate` runs.
 * Nothing here takes part in the tests or in the tool.
 */
@NullMarked
package rallywright.benchmarks.calibration;

import org.jspecify.annotations.NullMarked;
