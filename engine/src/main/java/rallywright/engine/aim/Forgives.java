package rallywright.engine.aim;

import rallywright.engine.flight.Ranged;

/**
 * What a window forgives, over the spread of drag and lift.
 *
 * @param pace around its best place, as a share of the pace
 * @param elevation there, in radians
 * @param area of the window, in metres per second times degrees
 */
public record Forgives(Ranged pace, Ranged elevation, Ranged area) {}
