/**
 * The rotation search beside two solver libraries with models of the same cost.
 *
 * <p>Start with {@link rallywright.benchmarks.rotation.RotationBesideSolvers}. It is never part of
 * the tests nor of the program.
 */
@NullMarked
package rallywright.benchmarks.rotation;

import org.jspecify.annotations.NullMarked;
