package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws that hold for any group, time and courts. */
class SessionPlannerPropertyTest {

  private static PlanProblem problem(int players, int courts, int minutes) {
    return PlanProblem.of(
        ToyDrills.players(players), ToyDrills.all(), SessionWish.of(minutes, courts));
  }

  @Property(tries = 25)
  void aPlan_keepsToEveryRule(
      @ForAll @IntRange(min = 2, max = 12) int players,
      @ForAll @IntRange(min = 1, max = 4) int courts,
      @ForAll @IntRange(min = 60, max = 120) int minutes) {
    PlanAnswer.Planned planned = ToyDrills.planned(problem(players, courts, minutes));
    assertThat(planned.check().brokenRules()).isEmpty();
    assertThat(planned.check().clock().minutesReserved()).isLessThanOrEqualTo(minutes);
    assertThat(planned.plan().blocks()).hasSizeGreaterThan(4);
  }

  @Property(tries = 25)
  void sitOuts_areSpreadByOneAtMost(
      @ForAll @IntRange(min = 2, max = 12) int players,
      @ForAll @IntRange(min = 1, max = 4) int courts) {
    PlanProblem problem = problem(players, courts, 75);
    SessionPlan plan = ToyDrills.planned(problem).plan();
    PlanContext context = new PlanContext(problem);
    PlanCheck.Clock clock = new PlanCheck.Clock(1, 0, 1, 1, 75);
    int[] sits = new PlanRules(plan, context, clock).sitOuts();
    int most = Arrays.stream(sits).max().orElseThrow();
    assertThat(most - Arrays.stream(sits).min().orElseThrow()).isLessThanOrEqualTo(1);
  }

  @Property(tries = 10)
  void theBound_isNeverPassed(
      @ForAll @IntRange(min = 2, max = 12) int players,
      @ForAll @IntRange(min = 30, max = 120) int minutes) {
    PlanCheck check = ToyDrills.planned(problem(players, 3, minutes)).check();
    assertThat(check.benefit()).isPositive().isLessThanOrEqualTo(check.bound());
  }

  @Property(tries = 5)
  void theSameSeed_givesTheSamePlan(@ForAll @IntRange(min = 2, max = 12) int players) {
    PlanProblem problem = problem(players, 2, 90);
    assertThat(SessionPlanner.plan(problem)).isEqualTo(SessionPlanner.plan(problem));
  }
}
