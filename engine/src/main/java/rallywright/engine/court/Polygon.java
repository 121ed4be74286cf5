package rallywright.engine.court;

import java.util.List;

/**
 * An area on the court bounded by straight edges.
 *
 * @param corners three or more points in order along the edge; the last joins the first
 */
public record Polygon(List<CourtPoint> corners) {

  /** Distances below this count as none, in metres: far below the width of a line. */
  private static final double TOUCH_METRES = 1e-9;

  /** Checks that the corners bound an area. */
  public Polygon {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException(
          "An area needs 3 corners or more, but "
              + corners.size()
              + " were given. Maybe name a zone instead: kitchen.");
    }
    if (!(Math.abs(signedSquareMetres(corners)) > TOUCH_METRES)) {
      throw new IllegalArgumentException(
          "The corners of an area must not lie on one line. Maybe a corner is given twice.");
    }
  }

  /**
   * The size of the area.
   *
   * @return square metres, above 0
   */
  public double squareMetres() {
    return Math.abs(signedSquareMetres(corners));
  }

  /**
   * Whether a point lies in the area; the edge belongs to it, as a line belongs to a court.
   *
   * @param point any point
   * @return true inside or on the edge
   */
  public boolean contains(CourtPoint point) {
    double x = point.across().metres();
    double y = point.along().metres();
    boolean inside = false;
    for (int i = 0; i < corners.size(); i++) {
      CourtPoint a = corners.get(i);
      CourtPoint b = corners.get((i + 1) % corners.size());
      if (touches(a, b, point)) {
        return true;
      }
      boolean spans = (a.along().metres() > y) != (b.along().metres() > y);
      double rise = (y - a.along().metres()) / (b.along().metres() - a.along().metres());
      if (spans && x < a.across().metres() + rise * (b.across().metres() - a.across().metres())) {
        inside = !inside;
      }
    }
    return inside;
  }

  /**
   * Whether two edges that are not neighbours meet.
   *
   * @return true if the edge crosses or touches itself
   */
  public boolean crossesItself() {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours && edgesMeet(i, j)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean edgesMeet(int i, int j) {
    int n = corners.size();
    CourtPoint a = corners.get(i);
    CourtPoint b = corners.get((i + 1) % n);
    CourtPoint c = corners.get(j);
    CourtPoint d = corners.get((j + 1) % n);
    boolean partsCd = turn(a, b, c) * turn(a, b, d) < 0;
    boolean partsAb = turn(c, d, a) * turn(c, d, b) < 0;
    return (partsCd && partsAb)
        || touches(a, b, c)
        || touches(a, b, d)
        || touches(c, d, a)
        || touches(c, d, b);
  }

  private static boolean touches(CourtPoint a, CourtPoint b, CourtPoint point) {
    double across = b.across().metres() - a.across().metres();
    double along = b.along().metres() - a.along().metres();
    double x = point.across().metres() - a.across().metres();
    double y = point.along().metres() - a.along().metres();
    double square = across * across + along * along;
    double share = square == 0 ? 0 : (x * across + y * along) / square;
    double nearest = Math.max(0, Math.min(1, share));
    return Math.hypot(x - nearest * across, y - nearest * along) < TOUCH_METRES;
  }

  /** Twice the signed area of the triangle: above 0 where a, b, c turn left. */
  private static double turn(CourtPoint a, CourtPoint b, CourtPoint c) {
    return (b.across().metres() - a.across().metres()) * (c.along().metres() - a.along().metres())
        - (b.along().metres() - a.along().metres()) * (c.across().metres() - a.across().metres());
  }

  /** The shoelace formula: half the sum of the cross products of neighbouring corners. */
  private static double signedSquareMetres(List<CourtPoint> corners) {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      CourtPoint a = corners.get(i);
      CourtPoint b = corners.get((i + 1) % corners.size());
      twice += a.across().metres() * b.along().metres() - b.across().metres() * a.along().metres();
    }
    return twice / 2;
  }
}
