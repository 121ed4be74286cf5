/**
 * The live board of a session: every lane with its game and score, who waits, and how the clock
 * stands; for the coach's laptop and for a large screen. Start at {@code BoardPages}; {@code
 * BoardStream} tells open boards that something changed. It never decides what counts: the
 * session's progress does.
 */
@NullMarked
package rallywright.web.board;

import org.jspecify.annotations.NullMarked;
