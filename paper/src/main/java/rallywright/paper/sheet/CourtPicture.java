package rallywright.paper.sheet;

/**
 * A court drawn to scale.
 *
 * @param svg the drawing as one svg element
 * @param caption the direction of play, for example "cross-court"
 * @param words what it shows, for readers who do not see it
 */
public record CourtPicture(String svg, String caption, String words) {}
