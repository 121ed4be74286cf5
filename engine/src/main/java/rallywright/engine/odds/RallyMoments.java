package rallywright.engine.odds;

/**
 * The number of rallies to come in a game.
 *
 * @param mean expected number
 * @param sd standard deviation
 */
public record RallyMoments(double mean, double sd) {}
