/**
 * Days of games with rotating partners: made from who is there, run round by round, shown on a
 * large screen. Start at {@code RotationPages}, then {@code DayPages}. It never decides who plays
 * whom: the engine does.
 */
@NullMarked
package rallywright.web.rotation;

import org.jspecify.annotations.NullMarked;
