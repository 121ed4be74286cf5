package rallywright.engine.court;

import rallywright.engine.quantity.Length;

/**
 * A point on the court as the reader sees it: the net's middle is the origin, the near end lies
 * below.
 *
 * @param across distance to the reader's right of the centre line; below 0 to the left
 * @param along distance beyond the net; below 0 on the near end
 */
public record CourtPoint(Length across, Length along) {

  /**
   * The point half a turn round the net's middle: what the far player sees.
   *
   * @return the turned point
   */
  public CourtPoint turned() {
    return new CourtPoint(across.negated(), along.negated());
  }
}
