package rallywright.engine.court;

import java.util.List;

/**
 * An area in one half of one end, for example where a drill allows the ball to land.
 *
 * @param corners three or more spots in order along the edge, inside the lines
 */
public record HalfArea(List<Spot> corners) {

  /** From the net to the non-volley line. */
  public static final HalfArea KITCHEN = between(0, 7);

  /** From the non-volley line to the baseline. */
  public static final HalfArea BEHIND_THE_KITCHEN = between(7, 22);

  /** From the net to the baseline. */
  public static final HalfArea WHOLE_HALF = between(0, 22);

  /** Checks that the corners bound an area inside the lines. */
  public HalfArea {
    corners = List.copyOf(corners);
    for (Spot corner : corners) {
      if (!corner.isInsideTheLines()) {
        throw new IllegalArgumentException(
            "The corner (%s from the centre line, %s from the net) must lie inside the lines:"
                    .formatted(corner.fromCentre().inFeet(), corner.fromNet().inFeet())
                + " at most 10 ft from the centre line and 22 ft from the net."
                + " Maybe the two distances were exchanged.");
      }
    }
    Polygon shape = shape(corners, CourtHalf.EVEN, End.NEAR);
    if (shape.crossesItself()) {
      throw new IllegalArgumentException(
          "The edge of an area must not cross itself. Maybe two corners were exchanged.");
    }
  }

  /**
   * A rectangle over the full width of the half.
   *
   * @param nearerFeet feet from the net to the nearer edge, 0 to 22
   * @param fartherFeet feet from the net to the farther edge, above the nearer, up to 22
   * @return the area
   */
  public static HalfArea between(double nearerFeet, double fartherFeet) {
    return new HalfArea(
        List.of(
            Spot.feet(0, nearerFeet),
            Spot.feet(10, nearerFeet),
            Spot.feet(10, fartherFeet),
            Spot.feet(0, fartherFeet)));
  }

  /**
   * The area on a lane.
   *
   * @param lane the lane
   * @param end the end
   * @return the area as the reader sees it
   */
  public Polygon on(Lane lane, End end) {
    return shape(corners, lane.half(end), end);
  }

  private static Polygon shape(List<Spot> corners, CourtHalf half, End end) {
    return new Polygon(corners.stream().map(corner -> corner.on(half, end)).toList());
  }
}
