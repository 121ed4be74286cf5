package rallywright.paper.sheet;

/**
 * A count of balls to be written down.
 *
 * @param name who is tested
 * @param balls out of how many, for example "of 20"
 */
public record CountCell(String name, String balls) {}
