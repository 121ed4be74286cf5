package rallywright.engine.court;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import rallywright.engine.quantity.Length;

class CourtPropertyTest {

  @Property
  void turningTwice_bringsAPointBack(
      @ForAll @DoubleRange(min = 0, max = 15) double out,
      @ForAll @DoubleRange(min = 0, max = 30) double back,
      @ForAll Lane lane,
      @ForAll End end) {
    CourtPoint point = Spot.feet(out, back).on(lane, end);
    assertThat(point.turned().turned()).isEqualTo(point);
    assertThat(Math.signum(point.along().metres()))
        .isEqualTo(back == 0 ? 0 : end == End.FAR ? 1 : -1);
  }

  @Property
  void bothPlayersOfADiagonal_seeTheSameCourt(
      @ForAll @DoubleRange(min = 0, max = 10) double out,
      @ForAll @DoubleRange(min = 0, max = 22) double back) {
    Spot spot = Spot.feet(out, back);
    for (Lane lane : List.of(Lane.CROSS_EVEN, Lane.CROSS_ODD)) {
      assertThat(spot.on(lane, End.FAR)).isEqualTo(spot.on(lane, End.NEAR).turned());
    }
  }

  /** Checked against the shapes of the Java library, which are tested by others. */
  @Property
  void star_containsWhatTheLibrarySays(
      @ForAll @DoubleRange(min = -6, max = 6) double x,
      @ForAll @DoubleRange(min = -6, max = 6) double y,
      @ForAll @DoubleRange(min = 0.5, max = 5) double inner) {
    List<CourtPoint> corners = new ArrayList<>();
    Path2D path = new Path2D.Double();
    for (int i = 0; i < 10; i++) {
      double radius = i % 2 == 0 ? 5 : inner;
      double px = radius * Math.cos(i * Math.PI / 5);
      double py = radius * Math.sin(i * Math.PI / 5);
      corners.add(new CourtPoint(Length.metres(px), Length.metres(py)));
      if (i == 0) {
        path.moveTo(px, py);
      } else {
        path.lineTo(px, py);
      }
    }
    path.closePath();
    if (!nearEdge(corners, x, y)) {
      assertThat(new Polygon(corners).contains(new CourtPoint(Length.metres(x), Length.metres(y))))
          .isEqualTo(path.contains(x, y));
    }
  }

  private static boolean nearEdge(List<CourtPoint> corners, double x, double y) {
    for (int i = 0; i < corners.size(); i++) {
      CourtPoint a = corners.get(i);
      CourtPoint b = corners.get((i + 1) % corners.size());
      double away =
          Line2D.ptSegDist(
              a.across().metres(),
              a.along().metres(),
              b.across().metres(),
              b.along().metres(),
              x,
              y);
      if (away < 1e-6) {
        return true;
      }
    }
    return false;
  }
}
