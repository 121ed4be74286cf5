package rallywright.engine.reading;

/**
 * The chance of a doubles game with what is not known about the players in it.
 *
 * @param chance the chance that side A wins, 0 to 1, averaged over what is not known
 * @param low the lower end of the 80 % interval of the chance
 * @param high its upper end
 */
public record DoublesOutlook(double chance, double low, double high) {}
