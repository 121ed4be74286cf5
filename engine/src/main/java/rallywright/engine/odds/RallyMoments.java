package rallywright.engine.odds;

/**
 * The number of rallies to come in a game.
 *
 * @param mean expected number
 * @param sd standard deviation
 * @param third third central moment; below 0 where short games are the rarer ones
 */
public record RallyMoments(double mean, double sd, double third) {}
