package rallywright.engine.court;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.quantity.Length;

class CourtTest {

  /** Exact metric values: 1 ft = 0.3048 m. Rule 2.A.1 (2025) prints 6.10 m and 13.41 m. */
  @Test
  void measures_inMetres_areThoseOfTheRules() {
    assertThat(Court.WIDTH.metres()).isCloseTo(6.0960, within(1e-12));
    assertThat(Court.LENGTH.metres()).isCloseTo(13.4112, within(1e-12));
    assertThat(Court.KITCHEN_DEPTH.metres()).isCloseTo(2.1336, within(1e-12));
    assertThat(Court.LINE_WIDTH.metres()).isCloseTo(0.0508, within(1e-12));
    assertThat(Court.BETWEEN_POSTS.metres()).isCloseTo(6.7056, within(1e-12));
    assertThat(Court.NET_AT_CENTRE.metres()).isCloseTo(0.8636, within(1e-12));
    assertThat(Court.NET_AT_SIDELINE.metres()).isCloseTo(0.9144, within(1e-12));
  }

  @Test
  void straightRightLane_joinsNearEvenAndFarOdd_onTheReadersRight() {
    Spot spot = Spot.feet(5, 7.5);
    assertThat(Lane.STRAIGHT_RIGHT.half(End.NEAR)).isEqualTo(CourtHalf.EVEN);
    assertThat(Lane.STRAIGHT_RIGHT.half(End.FAR)).isEqualTo(CourtHalf.ODD);
    assertThat(spot.on(Lane.STRAIGHT_RIGHT, End.NEAR)).isEqualTo(point(5, -7.5));
    assertThat(spot.on(Lane.STRAIGHT_RIGHT, End.FAR)).isEqualTo(point(5, 7.5));
  }

  @Test
  void evenDiagonal_runsFromNearRightToFarLeft() {
    Spot spot = Spot.feet(5, 22);
    assertThat(spot.on(Lane.CROSS_EVEN, End.NEAR)).isEqualTo(point(5, -22));
    assertThat(spot.on(Lane.CROSS_EVEN, End.FAR)).isEqualTo(point(-5, 22));
    assertThat(spot.on(Lane.CROSS_ODD, End.NEAR)).isEqualTo(point(-5, -22));
    assertThat(spot.on(Lane.CROSS_ODD, End.FAR)).isEqualTo(point(5, 22));
  }

  @ParameterizedTest
  @EnumSource(Lane.class)
  void lanesThatShareACourt_haveNoGroundInCommon(Lane lane) {
    for (Lane other : Lane.values()) {
      Spot middle = Spot.feet(5, 11);
      boolean common =
          middle.on(lane, End.NEAR).equals(middle.on(other, End.NEAR))
              || middle.on(lane, End.FAR).equals(middle.on(other, End.FAR));
      assertThat(lane.sharesCourtWith(other)).isEqualTo(!common);
    }
  }

  @Test
  void lanesOfADirection_areTwoStraightAndOneOfEachDiagonal() {
    assertThat(Lane.of(Direction.STRAIGHT))
        .containsExactly(Lane.STRAIGHT_RIGHT, Lane.STRAIGHT_LEFT);
    assertThat(Lane.of(Direction.CROSS_EVEN)).containsExactly(Lane.CROSS_EVEN);
    assertThat(Lane.of(Direction.CROSS_ODD)).containsExactly(Lane.CROSS_ODD);
  }

  @Test
  void kitchenHalf_isSevenByTenFeet() {
    Polygon kitchen = HalfArea.KITCHEN.on(Lane.CROSS_ODD, End.FAR);
    assertThat(kitchen.squareMetres()).isCloseTo(70 * 0.3048 * 0.3048, within(1e-12));
    assertThat(kitchen.contains(point(5, 7))).isTrue();
    assertThat(kitchen.contains(point(5, 7.01))).isFalse();
    assertThat(kitchen.contains(point(-0.01, 3))).isFalse();
    assertThat(kitchen.contains(point(10, 0))).isTrue();
  }

  @Test
  void dentedArea_leavesOutItsDent() {
    Polygon dented =
        new Polygon(List.of(point(0, 0), point(10, 0), point(10, 10), point(5, 2), point(0, 10)));
    assertThat(dented.contains(point(5, 1))).isTrue();
    assertThat(dented.contains(point(5, 5))).isFalse();
    assertThat(dented.contains(point(9, 5))).isTrue();
    assertThat(dented.squareMetres()).isCloseTo(60 * 0.3048 * 0.3048, within(1e-12));
  }

  @Test
  void areaBeyondTheLines_isRefused() {
    assertThatThrownBy(() -> HalfArea.between(0, 23)).hasMessageContaining("inside the lines");
    assertThatThrownBy(() -> new HalfArea(List.of(Spot.feet(0, 0), Spot.feet(5, 5))))
        .hasMessageContaining("3 corners or more");
    assertThatThrownBy(
            () ->
                new HalfArea(
                    List.of(
                        Spot.feet(0, 0), Spot.feet(10, 20), Spot.feet(10, 0), Spot.feet(0, 19))))
        .hasMessageContaining("cross itself");
    assertThatThrownBy(
            () -> new HalfArea(List.of(Spot.feet(0, 0), Spot.feet(5, 5), Spot.feet(10, 10))))
        .hasMessageContaining("one line");
  }

  @Test
  void spotOutsideTheSurface_isRefused() {
    assertThatThrownBy(() -> Spot.feet(16, 5)).hasMessageContaining("from 0 to 15 ft");
    assertThatThrownBy(() -> Spot.feet(5, -1)).hasMessageContaining("from 0 to 30 ft");
    assertThatThrownBy(() -> Spot.feet(Double.NaN, 1)).hasMessageContaining("finite");
  }

  @Test
  void zones_byDistance_haveTheirNames() {
    assertThat(Zone.at(Length.feet(7))).isEqualTo(Zone.KITCHEN);
    assertThat(Zone.at(Length.feet(7.1))).isEqualTo(Zone.TRANSITION);
    assertThat(Zone.at(Length.feet(20))).isEqualTo(Zone.BACKCOURT);
    assertThat(Zone.at(Length.feet(24))).isEqualTo(Zone.BEHIND_THE_BASELINE);
  }

  private static CourtPoint point(double acrossFeet, double alongFeet) {
    return new CourtPoint(Length.feet(acrossFeet), Length.feet(alongFeet));
  }
}
