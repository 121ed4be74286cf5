/**
 * Pages for the catalogue: the list from the line back to the baseline, a drill, a yardstick.
 *
 * <p>Start with {@link rallywright.web.drills.DrillPages}. Nothing about players is shown here.
 */
@NullMarked
package rallywright.web.drills;

import org.jspecify.annotations.NullMarked;
