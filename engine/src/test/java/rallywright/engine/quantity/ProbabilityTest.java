package rallywright.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ProbabilityTest {

  @Test
  void chance_outsideZeroToOne_isRefusedWithAHint() {
    for (double bad : new double[] {-0.01, 1.01, 55, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> Probability.of(bad))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("must lie from 0 to 1")
          .hasMessageContaining("Maybe");
    }
  }

  @Test
  void complement_ofSixInTen_isFourInTen() {
    assertThat(Probability.of(0.6).complement().value()).isCloseTo(0.4, within(1e-15));
  }

  private static org.assertj.core.data.Offset<Double> within(double tolerance) {
    return org.assertj.core.data.Offset.offset(tolerance);
  }
}
