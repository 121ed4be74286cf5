/**
 * Notes in words of a session: on a player, on the drill of a block, on the session. Start at
 * {@code NotePages}; {@code NoteLines} puts them into words for pages of the coach. They are never
 * shown on pages that a key opens, on the wall or on paper.
 */
@NullMarked
package rallywright.web.notes;

import org.jspecify.annotations.NullMarked;
