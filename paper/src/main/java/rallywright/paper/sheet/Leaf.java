package rallywright.paper.sheet;

/**
 * One page of a sheet.
 *
 * @param number its number, from 1
 * @param left the half left of the fold
 * @param right the half right of the fold
 * @param noteLines how many lines for notes stand under the right half
 */
public record Leaf(int number, Half left, Half right, int noteLines) {}
