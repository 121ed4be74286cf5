package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.PlannedBlock.Kind;

/** What a coach may ask for beside the rules: who plays, who counts, what is done together. */
class RequestsTest {

  private static final List<Attendee> FOUR = ToyDrills.players(4);
  private static final SessionWish WISH = SessionWish.of(90, 1);

  private static SessionPlan planned(PlanProblem problem) {
    PlanAnswer.Planned planned = ToyDrills.planned(problem);
    assertThat(planned.check().brokenRules()).isEmpty();
    return planned.plan();
  }

  private static Requests pinned(String drill, Line line, int rounds) {
    return Requests.NONE.with(new Slot.Pinned(new DrillKey(drill), line, rounds));
  }

  @Test
  void numbersOutOfRange_areRefusedWithWhatIsAllowed() {
    assertThat(catchThrowable(() -> new Requests.Rests(5, 5))).hasMessageContaining("10 to 120");
    assertThat(catchThrowable(() -> FOUR.get(0).withWeight(Double.NaN)))
        .hasMessageContaining("0 to 10");
    assertThat(catchThrowable(() -> pinned("dinks", Line.CROSS, 9))).hasMessageContaining("1 to 8");
  }

  @Test
  void search_thatIsStopped_answersTheBestSoFar() {
    PlanProblem problem = PlanProblem.of(FOUR, ToyDrills.all(), WISH);
    List<SearchWatch.Progress> heard = new ArrayList<>();
    PlanAnswer answer =
        SessionPlanner.plan(
            problem,
            progress -> {
              heard.add(progress);
              return SearchWatch.Verdict.STOP;
            });
    assertThat(heard).hasSize(1);
    assertThat(heard.get(0).done()).isBetween(0.0, 1.0);
    assertThat(heard.get(0).words()).contains("in 100 done");
    assertThat(heard.get(0).best())
        .isNotEmpty()
        .allSatisfy(e -> assertThat(e.rounds()).isPositive());
    assertThat(((PlanAnswer.Planned) answer).check().brokenRules()).isEmpty();
  }

  @Test
  void together_isPlannedByTheClockAndNotScored() {
    List<Drill> drills = new ArrayList<>(ToyDrills.all());
    drills.add(ToyDrills.together("rally-together", Skill.DINK));
    PlanProblem problem =
        PlanProblem.of(FOUR, drills, WISH.withRequests(pinned("rally-together", Line.STRAIGHT, 1)));
    assertThat(planned(problem).blocks())
        .filteredOn(block -> block.kind() == Kind.TOGETHER)
        .hasSize(1)
        .allSatisfy(
            block -> {
              assertThat(block.games()).isEmpty();
              assertThat(block.time().mean()).isEqualTo(11);
            });
  }

  @Test
  void threeOnALane_nobodySitsAWholeRoundOut() {
    Requests three = Requests.NONE.withSpare(Requests.Spare.THREE_ON_A_LANE);
    PlanProblem problem =
        PlanProblem.of(ToyDrills.players(5), ToyDrills.all(), WISH.withRequests(three));
    SessionPlan plan = planned(problem);
    int[] sits = new PeopleRules(plan, new PlanContext(problem)).sitOuts();
    assertThat(sits).containsOnly(0);
  }

  @Test
  void coachWhoFillsIn_playsOnlyWhereTheNumberIsOdd() {
    List<Attendee> five = new ArrayList<>(ToyDrills.players(5));
    five.add(coach());
    SessionPlan odd = planned(PlanProblem.of(five, ToyDrills.all(), SessionWish.of(60, 2)));
    assertThat(odd.blocks().stream().flatMap(each -> each.games().stream()))
        .anyMatch(game -> plays(game, "Coach"));
    List<Attendee> four = new ArrayList<>(FOUR);
    four.add(coach());
    SessionPlan even = planned(PlanProblem.of(four, ToyDrills.all(), SessionWish.of(60, 2)));
    assertThat(even.blocks().stream().flatMap(each -> each.games().stream()))
        .noneMatch(game -> plays(game, "Coach"));
  }

  private static Attendee coach() {
    Attendee model = FOUR.get(0);
    return new Attendee(new PlayerId("Coach"), model.standing(), Set.of()).fillingIn();
  }

  private static boolean plays(PlannedGame game, String name) {
    PlayerId id = new PlayerId(name);
    return game.a().players().contains(id) || game.b().players().contains(id);
  }

  @Test
  void weights_ofACoach_turnThePlanToThoseWhoCountMore() {
    List<Attendee> players = new ArrayList<>(ToyDrills.players(4));
    players.replaceAll(each -> ToyDrills.with(each, Skill.DINK, 1));
    players.set(0, ToyDrills.with(ToyDrills.players(4).get(0), Skill.DINK, -2));
    double equal = dinks(players);
    players.set(0, players.get(0).withWeight(10));
    assertThat(dinks(players)).isGreaterThanOrEqualTo(equal).isPositive();
  }

  private static double dinks(List<Attendee> players) {
    List<Drill> drills = new ArrayList<>(ToyDrills.warmUps());
    drills.addAll(
        ToyDrills.all().stream()
            .filter(each -> Set.of("dinks", "drops").contains(each.key().value()))
            .toList());
    SessionWish wish = SessionWish.of(60, 1).withCoverage(Coverage.NEEDS);
    SessionPlan plan = ToyDrills.planned(PlanProblem.of(players, drills, wish)).plan();
    return ToyDrills.minutesByDrill(plan).getOrDefault("dinks", 0.0);
  }
}
