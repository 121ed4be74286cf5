package rallywright.engine.court;

import rallywright.engine.quantity.Length;

/**
 * A place in one half of one end, told as a player would: so far from the net, so far out from the
 * centre line. Right and left halves are mirror images, so one spot serves all lanes.
 *
 * @param fromCentre distance from the centre line toward the side line, 0 to 15 ft
 * @param fromNet distance from the net, 0 to 30 ft
 */
public record Spot(Length fromCentre, Length fromNet) {

  /** The farthest from the centre line on the smallest surface. */
  public static final Length FARTHEST_OUT = Court.SURFACE_WIDTH.times(0.5);

  /** The farthest from the net on the smallest surface. */
  public static final Length FARTHEST_BACK = Court.SURFACE_LENGTH.times(0.5);

  /** Checks that the spot lies on the smallest playing surface. */
  public Spot {
    requireWithin("distance from the centre line", fromCentre, FARTHEST_OUT);
    requireWithin("distance from the net", fromNet, FARTHEST_BACK);
  }

  /**
   * A spot by its distances in feet.
   *
   * @param fromCentre feet from the centre line, 0 to 15
   * @param fromNet feet from the net, 0 to 30
   * @return the spot
   * @throws IllegalArgumentException if it lies outside
   */
  public static Spot feet(double fromCentre, double fromNet) {
    return new Spot(Length.feet(fromCentre), Length.feet(fromNet));
  }

  /**
   * Where this spot lies on the court.
   *
   * @param half the half in which the player stands
   * @param end the end at which the player stands
   * @return the point as the reader sees it
   */
  public CourtPoint on(CourtHalf half, End end) {
    Length right = half == CourtHalf.EVEN ? fromCentre : fromCentre.negated();
    CourtPoint near = new CourtPoint(right, fromNet.negated());
    return end == End.NEAR ? near : near.turned();
  }

  /**
   * Where this spot lies on a lane.
   *
   * @param lane the lane
   * @param end the end at which the player stands
   * @return the point as the reader sees it
   */
  public CourtPoint on(Lane lane, End end) {
    return on(lane.half(end), end);
  }

  /**
   * Whether the spot lies inside the lines of its half, lines included.
   *
   * @return true inside
   */
  public boolean isInsideTheLines() {
    return fromCentre.compareTo(Court.HALF_WIDTH) <= 0 && fromNet.compareTo(Court.HALF_LENGTH) <= 0;
  }

  private static void requireWithin(String what, Length length, Length most) {
    if (length.compareTo(Length.ZERO) < 0 || length.compareTo(most) > 0) {
      throw new IllegalArgumentException(
          "The %s (%s) must lie from 0 to %s. Maybe it was meant in metres or inches."
              .formatted(what, length.inFeet(), most.inFeet()));
    }
  }
}
