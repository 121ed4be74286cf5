package rallywright.engine.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.Attendee;
import rallywright.engine.plan.PlanAnswer;
import rallywright.engine.plan.PlanProblem;
import rallywright.engine.plan.PlannedBlock.Kind;
import rallywright.engine.plan.SessionPlanner;
import rallywright.engine.plan.SessionWish;
import rallywright.engine.plan.ToyDrills;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.PointWorth;
import rallywright.engine.practice.SkillStanding;

class SeasonTest {

  private static Attendee player(String name, Skill weak) {
    PlayerStanding standing = PlayerStanding.newcomer(name, Optional.empty());
    for (Skill skill : Skill.values()) {
      double mean = skill == weak ? -1.5 : 0;
      standing = standing.with(new SkillStanding(skill, mean, 0.2, 100, List.of(10.0)));
    }
    return new Attendee(new PlayerId(name), standing, Set.of());
  }

  private static final List<Attendee> TWO =
      List.of(player("Ann", Skill.DROP), player("Ben", Skill.DROP));

  private static Season season(int weeks) {
    return Season.of(TWO, PointWorth.DOUBLES, new SeasonWish(weeks, 4));
  }

  @Test
  void firstWeek_hasTheGreatestNeedInFront() {
    assertThat(season(8).weeks().get(0).focus()).startsWith(Skill.DROP).hasSize(Season.IN_FRONT);
  }

  @Test
  void weeks_goFromBroadToDeepToTogether() {
    assertThat(season(10).weeks())
        .extracting(SeasonWeek::phase)
        .startsWith(Phase.BROAD)
        .contains(Phase.DEEP)
        .endsWith(Phase.TOGETHER)
        .isSorted();
  }

  @Property(tries = 50)
  void tests_standInEveryKthWeek(
      @ForAll @IntRange(min = 1, max = 52) int weeks,
      @ForAll @IntRange(min = 1, max = 12) int every) {
    Season season = Season.of(TWO, PointWorth.DOUBLES, new SeasonWish(weeks, every));
    assertThat(season.weeks()).hasSize(weeks);
    assertThat(season.weeks())
        .filteredOn(week -> week.test() == SeasonWeek.Test.DUE)
        .hasSize(weeks / every);
  }

  @Test
  void noSkill_staysInFrontForEver_andTheWorthyOnesAllCome() {
    Set<Skill> seen = EnumSet.noneOf(Skill.class);
    season(12).weeks().forEach(week -> seen.addAll(week.focus()));
    assertThat(seen).contains(Skill.DROP, Skill.RESET, Skill.DINK, Skill.COUNTER, Skill.RETURN);
  }

  @Test
  void aWeek_madeConcrete_putsItsSkillsInFrontAndItsTestIn() {
    List<Attendee> today = List.of(player("Ann", Skill.LOB), player("Ben", Skill.LOB));
    PlanProblem problem =
        PlanProblem.of(today, ToyDrills.all(), SessionWish.of(60, 1))
            .withYardsticks(List.of(ToyDrills.yardstick("drops-test", Skill.DROP)));
    SeasonWeek week = season(8).weeks().get(3);
    assertThat(week.test()).isEqualTo(SeasonWeek.Test.DUE);
    PlanProblem concrete = week.concrete(problem);
    Skill first = week.focus().get(0);
    PlayerStanding ann = today.get(0).standing();
    assertThat(concrete.knowledge().worth().of(ann).get(first))
        .isEqualTo(
            SeasonWeek.FOCUS
                * Objects.requireNonNull(problem.knowledge().worth().of(ann).get(first)));
    PlanAnswer.Planned planned = (PlanAnswer.Planned) SessionPlanner.plan(concrete);
    assertThat(planned.check().brokenRules()).isEmpty();
    assertThat(planned.plan().blocks()).anyMatch(block -> block.kind() == Kind.YARDSTICK);
  }

  @Test
  void words_sayWhatIsInFrontAndWhenATestIsDue() {
    assertThat(season(8).weeks().get(0).words()).contains("Week 1: drop and", "in front.");
    assertThat(season(8).weeks().get(3).words()).endsWith("A test is due.");
  }

  @Test
  void wishes_outOfRange_areRefused() {
    assertThatThrownBy(() -> new SeasonWish(0, 4)).hasMessageContaining("1 to 52");
    assertThatThrownBy(() -> new SeasonWish(8, 0)).hasMessageContaining("Maybe 4");
    assertThatThrownBy(() -> Season.of(List.of(), PointWorth.DOUBLES, new SeasonWish(8, 4)))
        .hasMessageContaining("nobody was chosen");
  }
}
