package rallywright.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class EstimateTest {

  private static final Estimate.Scale CHANCE = new Estimate.Scale(0, 1, "never", "always");

  @Test
  void chance_whoseMeanLiesBesideItsInterval_hasItsTickAtTheEnd() {
    assertThat(Estimate.ofChance(CHANCE, 0.997, 0.974, 1, "").middle()).isEqualTo(0.997);
    assertThat(Estimate.ofChance(CHANCE, 0, 0.03, 0.002, "").middle()).isEqualTo(0.002);
    assertThat(Estimate.ofChance(CHANCE, 0.2, 0.4, 0.5, "").middle()).isEqualTo(0.4);
  }

  @Test
  void estimate_withoutAnOrder_isRefused() {
    assertThatThrownBy(() -> new Estimate(CHANCE, 0.5, 0.4, 0.6, ""))
        .hasMessageContaining("middle (0.4)");
    assertThatThrownBy(() -> new Estimate(CHANCE, 0.5, Double.NaN, 0.6, ""))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
