package rallywright.web.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.Requests;
import rallywright.web.page.Form;

class MoreWishesTest {

  private static final MoreWishes ALL =
      new MoreWishes(
          List.of(new DrillKey("kitchen-only")),
          List.of(new DrillKey("drive-into-hands")),
          List.of(Skill.DROP, Skill.RESET),
          MoreWishes.Tests.ONE,
          Requests.Spare.THREE_ON_A_LANE,
          Requests.Ends.LAST_LANE,
          OptionalInt.of(25),
          Optional.of(new PlayerId("coach-1")),
          List.of(WishChoices.equipment().keySet().iterator().next()),
          List.of(new PlayerId("ann"), new PlayerId("ben")),
          List.of(new PlayerId("coach-2")));

  @Test
  void wishes_keptAsText_comeBackTheSame() {
    assertThat(MoreWishes.of(ALL.text())).isEqualTo(ALL);
    assertThat(MoreWishes.of(MoreWishes.NONE.text())).isEqualTo(MoreWishes.NONE);
  }

  @Test
  void wishes_becomeRequestsOfThePlanner() {
    Requests requests = ALL.requests();
    assertThat(requests.slots()).hasSize(1);
    assertThat(requests.forbidden()).containsExactly(new DrillKey("drive-into-hands"));
    assertThat(requests.rests().orElseThrow().everyMinutes()).isEqualTo(25);
    assertThat(requests.equipment().orElseThrow())
        .hasSize(WishChoices.equipment().size() - 1)
        .doesNotContainAnyElementsOf(ALL.missing());
    assertThat(MoreWishes.NONE.requests()).isEqualTo(Requests.NONE);
  }

  @Test
  void weights_countTwiceOnceOrNotAtAll() {
    assertThat(ALL.weight(new PlayerId("ann"))).isEqualTo(2);
    assertThat(ALL.weight(new PlayerId("carl"))).isEqualTo(1);
    assertThat(ALL.weight(new PlayerId("coach-2"))).isZero();
  }

  @Test
  void fold_standsOpenOnlyWhereSomethingIsAskedFor() {
    assertThat(WishChoices.anyIn(MoreWishes.NONE.shownIn(Form.empty()))).isFalse();
    assertThat(WishChoices.anyIn(ALL.shownIn(Form.empty()))).isTrue();
  }
}
