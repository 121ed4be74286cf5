/**
 * What stands on a rotation sheet, and how large.
 *
 * <p>Start with {@link rallywright.paper.rotation.RotationView}. It never chooses who plays whom.
 */
@NullMarked
package rallywright.paper.rotation;

import org.jspecify.annotations.NullMarked;
