package rallywright.paper.sheet;

/**
 * What a role has to do.
 *
 * @param mark its form
 * @param words the role and its place, for example "back, at the baseline"
 */
public record RoleLine(Mark mark, String words) {}
