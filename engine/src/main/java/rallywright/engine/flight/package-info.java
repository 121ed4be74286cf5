/**
 * The flight of the ball: what leaves the paddle, where it crosses the net, where it lands, how it
 * bounces, and which launches a shot allows.
 *
 * <p>Start with {@link rallywright.engine.flight.FlightSolver}; {@link
 * rallywright.engine.flight.Shot} and {@link rallywright.engine.flight.LaunchWindow} ask the
 * questions of a coach. SI units throughout. Nothing here knows of scores or players.
 *
 * <p>Frame: x toward the receiver with the net plane at 0, y to the hitter's left, z up with the
 * floor at 0; a position is that of the ball's centre.
 */
@NullMarked
package rallywright.engine.flight;

import org.jspecify.annotations.NullMarked;
