package rallywright.engine.rotation;

import java.util.function.Supplier;

/**
 * How far a search has come.
 *
 * @param share of the moves that are done, 0 to 1
 * @param cost of the best rotation so far, in points of the cost
 * @param best makes the best rotation so far
 */
public record SearchProgress(double share, double cost, Supplier<RotationSchedule> best) {}
