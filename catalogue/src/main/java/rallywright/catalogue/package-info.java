/**
 * Reads the drill files that ship with the program.
 *
 * <p>Start with {@link rallywright.catalogue.Catalogue}. It never writes.
 */
@NullMarked
package rallywright.catalogue;

import org.jspecify.annotations.NullMarked;
