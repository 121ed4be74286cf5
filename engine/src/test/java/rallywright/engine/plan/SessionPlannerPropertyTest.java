package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import rallywright.engine.club.PlayerId;

/** Laws that hold for any group, time and courts. */
class SessionPlannerPropertyTest {

  private static PlanProblem problem(int players, int courts, int minutes) {
    return PlanProblem.of(
        ToyDrills.players(players), ToyDrills.all(), SessionWish.of(minutes, courts));
  }

  @Property(tries = 10)
  void aPlan_keepsToEveryRule(
      @ForAll @IntRange(min = 2, max = 40) int players,
      @ForAll @IntRange(min = 1, max = 12) int courts,
      @ForAll @IntRange(min = 60, max = 120) int minutes) {
    PlanAnswer.Planned planned = ToyDrills.planned(problem(players, courts, minutes));
    assertThat(planned.check().brokenRules()).isEmpty();
    assertThat(planned.check().clock().minutesReserved()).isLessThanOrEqualTo(minutes);
    assertThat(planned.plan().blocks()).hasSizeGreaterThan(4);
  }

  @Property(tries = 10)
  void inEveryTurn_everybodyPlaysOnceOrSits(
      @ForAll @IntRange(min = 2, max = 40) int players,
      @ForAll @IntRange(min = 1, max = 12) int courts,
      @ForAll Requests.Spare spare) {
    Requests requests = Requests.NONE.withSpare(spare);
    SessionPlan plan = planWith(players, courts, requests);
    for (PlannedBlock block : plan.blocks()) {
      for (int turn = 1; turn <= block.turns(); turn++) {
        int now = turn;
        List<PlayerId> seen = new ArrayList<>(block.sitting().get(turn - 1));
        block.games().stream()
            .filter(game -> game.turn() == now)
            .forEach(
                game -> {
                  seen.addAll(game.a().players());
                  seen.addAll(game.b().players());
                });
        assertThat(seen).containsExactlyInAnyOrderElementsOf(plan.present());
      }
    }
  }

  @Property(tries = 8)
  void whoComesAndGoes_isPlacedOnceWhileThere_andNeverElse(
      @ForAll @IntRange(min = 4, max = 24) int players,
      @ForAll @IntRange(min = 1, max = 6) int courts,
      @ForAll @IntRange(min = 1, max = 60) int comes,
      @ForAll @IntRange(min = 25, max = 85) int leaves) {
    List<Attendee> attendees = new ArrayList<>(ToyDrills.players(players));
    attendees.set(0, attendees.get(0).during(Stay.from(comes)));
    attendees.set(1, attendees.get(1).during(Stay.until(leaves)));
    PlanProblem problem = PlanProblem.of(attendees, ToyDrills.all(), SessionWish.of(90, courts));
    PlanAnswer.Planned planned = ToyDrills.planned(problem);
    assertThat(planned.check().brokenRules()).isEmpty();
    assertThat(planned.check().benefit()).isLessThanOrEqualTo(planned.check().bound());
    double clock = 0;
    for (PlannedBlock block : planned.plan().blocks()) {
      for (int turn = 1; turn <= block.turns(); turn++) {
        int now = turn;
        List<PlayerId> playing = new ArrayList<>();
        block.games().stream()
            .filter(game -> game.turn() == now)
            .forEach(
                game -> {
                  playing.addAll(game.a().players());
                  playing.addAll(game.b().players());
                });
        List<PlayerId> seen = new ArrayList<>(playing);
        seen.addAll(block.sitting().get(turn - 1));
        assertThat(seen).doesNotHaveDuplicates();
        assertThat(seen).containsAll(planned.plan().present().subList(2, players));
        double end = clock + block.time().mean();
        boolean tooEarly = end < comes + Stay.OWN_WARM_UP_MINUTES;
        assertThat(tooEarly && playing.contains(attendees.get(0).id())).isFalse();
        assertThat(clock >= leaves && playing.contains(attendees.get(1).id())).isFalse();
      }
      clock += block.time().mean();
    }
  }

  @Property(tries = 8)
  void bothOfAPair_takeBothRolesOfAnUnevenDrill(
      @ForAll @IntRange(min = 2, max = 24) int players,
      @ForAll @IntRange(min = 1, max = 6) int courts) {
    PlanProblem problem = problem(players, courts, 90);
    PlanContext context = new PlanContext(problem);
    for (PlannedBlock block : ToyDrills.planned(problem).plan().blocks()) {
      if (!block.games().isEmpty() && context.lineOf(block).swapsRoles()) {
        for (PlannedGame game : block.games()) {
          assertThat(block.games())
              .anyMatch(
                  other ->
                      other.a().players().equals(game.b().players())
                          && other.b().players().equals(game.a().players()));
        }
      }
    }
  }

  @Property(tries = 10)
  void nobody_sitsTwiceRunningWhileHalfCanPlay(
      @ForAll @IntRange(min = 2, max = 40) int players,
      @ForAll @IntRange(min = 1, max = 12) int courts) {
    Assume.that(2 * Math.min(2 * courts, players / 2) * 2 >= players);
    SessionPlan plan = planWith(players, courts, Requests.NONE);
    PlanContext context = new PlanContext(problem(players, courts, 90));
    Set<PlayerId> last = Set.of();
    for (PlannedBlock block : plan.blocks()) {
      int turns = block.games().isEmpty() ? 1 : context.turnsPerStint(block);
      for (int turn = 0; turn < block.turns(); turn += turns) {
        Set<PlayerId> sitting = Set.copyOf(block.sitting().get(turn));
        assertThat(Collections.disjoint(sitting, last)).isTrue();
        last = sitting;
      }
    }
  }

  private static SessionPlan planWith(int players, int courts, Requests requests) {
    SessionWish wish = SessionWish.of(90, courts).withRequests(requests);
    return ToyDrills.planned(PlanProblem.of(ToyDrills.players(players), ToyDrills.all(), wish))
        .plan();
  }

  @Property(tries = 10)
  void sitOuts_areSpreadByOneAtMost(
      @ForAll @IntRange(min = 2, max = 40) int players,
      @ForAll @IntRange(min = 1, max = 12) int courts) {
    PlanProblem problem = problem(players, courts, 75);
    SessionPlan plan = ToyDrills.planned(problem).plan();
    int[] sits = new PeopleRules(plan, new PlanContext(problem)).sitOuts();
    int most = Arrays.stream(sits).max().orElseThrow();
    assertThat(most - Arrays.stream(sits).min().orElseThrow()).isLessThanOrEqualTo(1);
  }

  @Property(tries = 10)
  void theBound_isNeverPassed(
      @ForAll @IntRange(min = 2, max = 40) int players,
      @ForAll @IntRange(min = 30, max = 120) int minutes) {
    PlanProblem problem = problem(players, 3, minutes);
    PlanCheck check = ToyDrills.planned(problem).check();
    assertThat(check.benefit()).isPositive().isLessThanOrEqualTo(check.bound());
    SearchModel model =
        new SearchModel(new PlanContext(problem), 60 * SessionPlanner.fixedMinutes(problem));
    SearchRules rules = new SearchRules(model);
    Walk found = Walk.through(model, new PlanSearch(model, rules, 7).best(SearchWatch.NOBODY));
    assertThat(rules.score(found)).isLessThanOrEqualTo(Relaxation.bound(model, rules) + 1e-9);
  }

  @Property(tries = 3)
  void theSameSeed_givesTheSamePlan(@ForAll @IntRange(min = 2, max = 12) int players) {
    PlanProblem problem = problem(players, 2, 90);
    assertThat(SessionPlanner.plan(problem)).isEqualTo(SessionPlanner.plan(problem));
  }
}
