package rallywright.engine.aim;

import rallywright.engine.flight.Ranged;

/**
 * The best aim, over the spread of drag and lift, of a player who has found it for each ball.
 *
 * @param chance of success
 * @param clearance air over the net, in metres
 * @param depth where it lands beyond the net, in metres
 * @param pace off the paddle, in metres per second
 */
public record AimRange(Ranged chance, Ranged clearance, Ranged depth, Ranged pace) {}
