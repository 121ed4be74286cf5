/**
 * The club as one file that people and other programs can read, and the way back: exports, imports
 * and lists of players.
 *
 * <p>Start with {@link rallywright.store.archive.ClubExport} and {@link
 * rallywright.store.archive.ClubImport}. Nothing is stored before everything was found right.
 */
@NullMarked
package rallywright.store.archive;

import org.jspecify.annotations.NullMarked;
