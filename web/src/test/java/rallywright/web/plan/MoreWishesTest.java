package rallywright.web.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.Requests;
import rallywright.engine.plan.Stay;
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
          new PlayerWishes(
              List.of(
                  wish("ann", "18:50", "", PlayerWish.Counts.TWICE),
                  wish("ben", "", "19:30", PlayerWish.Counts.THREE_TIMES),
                  wish("coach-2", "", "", PlayerWish.Counts.NOT_AT_ALL)),
              LocalTime.of(18, 30)));

  private static PlayerWish wish(
      String player, String comes, String leaves, PlayerWish.Counts counts) {
    return new PlayerWish(new PlayerId(player), time(comes), time(leaves), counts);
  }

  private static Optional<LocalTime> time(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(LocalTime.parse(text));
  }

  @Test
  void wishes_keptAsText_comeBackTheSame() {
    MoreWishes again = MoreWishes.of(ALL.text());
    assertThat(again.with(again.single().startingAt(LocalTime.of(18, 30)))).isEqualTo(ALL);
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
  void weights_countThreeTimesTwiceOnceOrNotAtAll() {
    PlayerWishes single = ALL.single();
    assertThat(single.weight(new PlayerId("ben"))).isEqualTo(3);
    assertThat(single.weight(new PlayerId("ann"))).isEqualTo(2);
    assertThat(single.weight(new PlayerId("carl"))).isEqualTo(1);
    assertThat(single.weight(new PlayerId("coach-2"))).isZero();
  }

  @Test
  void times_becomeMinutesFromTheStart_overMidnightToo() {
    PlayerWishes single = ALL.single();
    assertThat(single.stay(new PlayerId("ann"))).isEqualTo(Stay.from(20));
    assertThat(single.stay(new PlayerId("ben"))).isEqualTo(Stay.until(60));
    assertThat(single.stay(new PlayerId("carl"))).isEqualTo(Stay.THROUGHOUT);
    assertThat(single.startingAt(LocalTime.of(19, 0)).stay(new PlayerId("ann")))
        .isEqualTo(Stay.THROUGHOUT);
    PlayerWish late = wish("ann", "00:10", "", PlayerWish.Counts.USUAL);
    assertThat(late.stay(LocalTime.of(23, 30))).isEqualTo(Stay.from(40));
  }

  @Test
  void times_thatCannotBe_areAnsweredInASentence() {
    LocalTime start = LocalTime.of(18, 0);
    assertThat(wish("ann", "19:00", "18:30", PlayerWish.Counts.USUAL).problem("Ann", start))
        .contains("Ann leaves at 18:30, before coming at 19:00. Maybe swap the two times.");
    assertThat(wish("ann", "", "17:30", PlayerWish.Counts.USUAL).problem("Ann", start))
        .contains("Ann leaves at 17:30, but the session starts at 18:00. Maybe a later time.");
    assertThat(wish("ann", "18:30", "19:00", PlayerWish.Counts.USUAL).problem("Ann", start))
        .isEmpty();
  }

  @Test
  void weights_keptBeforeThereWereTimes_areReadStill() {
    MoreWishes kept = MoreWishes.of("pinned=\ntwice=ann,ben\nuncounted=coach-2");
    assertThat(kept.single().weight(new PlayerId("ben"))).isEqualTo(2);
    assertThat(kept.single().weight(new PlayerId("coach-2"))).isZero();
  }

  @Test
  void fold_standsOpenOnlyWhereSomethingIsAskedFor() {
    assertThat(WishChoices.anyIn(MoreWishes.NONE.shownIn(Form.empty()))).isFalse();
    assertThat(WishChoices.anyIn(ALL.shownIn(Form.empty()))).isTrue();
    assertThat(PlayerRow.anyIn(MoreWishes.NONE.shownIn(Form.empty()))).isFalse();
    assertThat(PlayerRow.anyIn(ALL.shownIn(Form.empty()))).isTrue();
    assertThat(PlayerRow.of(ALL.shownIn(Form.empty()), Map.of("ann", "Ann")))
        .hasSize(6)
        .first()
        .isEqualTo(new PlayerRow(1, "Ann", "18:50", "", "TWICE"));
  }
}
