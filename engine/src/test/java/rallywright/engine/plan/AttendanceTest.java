package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.PlannedBlock.Kind;

/** Somebody comes late, somebody leaves early: the plan knows who is there when. */
class AttendanceTest {

  private static final SessionWish WISH = SessionWish.of(100, 3);
  private static final Attendee LATE = ToyDrills.players(13).get(12).during(Stay.from(30));
  private static final Attendee EARLY = ToyDrills.players(13).get(5).during(Stay.until(50));
  private static final PlanProblem PROBLEM =
      PlanProblem.of(thirteen(LATE, EARLY), ToyDrills.all(), WISH);
  private static final PlanAnswer.Planned PLANNED = ToyDrills.planned(PROBLEM);

  private static List<Attendee> thirteen(Attendee late, Attendee early) {
    List<Attendee> players = new ArrayList<>(ToyDrills.players(13));
    players.set(12, late);
    players.set(5, early);
    return players;
  }

  /** When each game is played, on the plan's own clock. */
  private record Timed(PlannedGame game, double fromMinute, double untilMinute) {

    boolean isOf(PlayerId player) {
      return game.a().players().contains(player) || game.b().players().contains(player);
    }
  }

  private static List<Timed> timed(PlanProblem problem, SessionPlan plan) {
    PlanContext context = new PlanContext(problem);
    List<Timed> games = new ArrayList<>();
    double start = 0;
    for (PlannedBlock block : plan.blocks()) {
      List<BlockClock.Span> spans = BlockClock.spans(block, start, context);
      for (int stint = 0; stint < spans.size(); stint++) {
        BlockClock.Span span = spans.get(stint);
        context
            .stints(block)
            .get(stint)
            .forEach(game -> games.add(new Timed(game, span.fromMinute(), span.untilMinute())));
      }
      start += block.time().mean();
    }
    return games;
  }

  private static List<Timed> gamesOf(Attendee player) {
    return timed(PROBLEM, PLANNED.plan()).stream().filter(each -> each.isOf(player.id())).toList();
  }

  @Test
  void lateComer_playsOnlyOnceThereAndWarm() {
    assertThat(PLANNED.check().brokenRules()).isEmpty();
    assertThat(gamesOf(LATE))
        .isNotEmpty()
        .allMatch(game -> game.fromMinute() >= 30 + Stay.OWN_WARM_UP_MINUTES);
    assertThat(gamesOf(LATE)).anyMatch(game -> game.fromMinute() < 50);
  }

  @Test
  void whoLeavesEarly_hasNoGameThatEndsAfterwards() {
    assertThat(gamesOf(EARLY)).isNotEmpty().allMatch(game -> game.untilMinute() <= 50 + 0.01);
    assertThat(gamesOf(EARLY)).anyMatch(game -> game.untilMinute() > 30);
  }

  @Test
  void whoIsNotThere_isNotSaidToSitOut() {
    PlannedBlock first =
        PLANNED.plan().blocks().stream()
            .filter(each -> !each.games().isEmpty())
            .findFirst()
            .orElseThrow();
    assertThat(first.sitting().get(0)).doesNotContain(LATE.id());
    assertThat(first.sitting().get(0)).isEmpty();
  }

  @Test
  void notes_sayWhenTheyComeAndGo_andThatTheLateComerWarmsUp() {
    List<String> notes =
        PLANNED.check().notes().stream().map(each -> each.words(m -> "minute " + m)).toList();
    assertThat(notes).hasSize(2);
    assertThat(notes.get(0)).startsWith("P5 leaves at minute 50; the last game ends at about");
    assertThat(notes.get(1))
        .startsWith("P12 comes at minute 30 and first warms up alone for 5 minutes")
        .contains("plays first at about minute");
  }

  @Test
  void withoutWarmUps_theLateComerPlaysAtOnce() {
    PlanProblem cold = PROBLEM.withWish(WISH.withWarmUps(WarmUps.LEFT_OUT_BY_CHOICE));
    PlanAnswer.Planned planned = ToyDrills.planned(cold);
    assertThat(planned.check().brokenRules()).isEmpty();
    assertThat(planned.check().notes().toString()).contains("ownWarmUp=0");
  }

  @Test
  void presence_ofSomebodyPlacedTooEarly_isTold_andMended() {
    PlanProblem everybody = PlanProblem.of(ToyDrills.players(13), ToyDrills.all(), WISH);
    SessionPlan careless = ToyDrills.planned(everybody).plan();
    PlanCheck check = PlanEditor.of(PROBLEM).check(careless);
    assertThat(check.brokenRules())
        .filteredOn(each -> each.rule() == PlanRule.PRESENCE)
        .hasSize(1)
        .allSatisfy(each -> assertThat(each.sentence()).containsPattern("P(5|12) is there"));
    PlanRepair.Repaired mended = PlanRepair.of(PROBLEM).repair(careless);
    assertThat(mended.check().brokenRules()).isEmpty();
    assertThat(mended.changes()).isNotEmpty().anyMatch(each -> each.contains("anew"));
  }

  @Test
  void swap_withSomebodyWhoHasLeft_isRefusedInASentence() {
    SessionPlan plan = PLANNED.plan();
    PlannedBlock last = plan.blocks().get(plan.blocks().size() - 1);
    PlayerId out = last.games().get(0).a().players().get(0);
    PlanEdit edit =
        PlanEditor.of(PROBLEM).swapSeats(plan, new SeatSwap(last.id(), 1, out, EARLY.id()));
    assertThat(((PlanEdit.Refused) edit).sentence())
        .contains("P5 is there until minute 50", "Maybe choose somebody else.");
  }

  @Test
  void editing_placesOnlyThoseWhoAreThere() {
    PlanEditor editor = PlanEditor.of(PROBLEM);
    SessionPlan plan = PLANNED.plan();
    PlannedBlock last = plan.blocks().get(plan.blocks().size() - 1);
    SessionPlan longer = ((PlanEdit.Changed) editor.moreGames(plan, last.id())).plan();
    assertThat(timed(PROBLEM, longer))
        .filteredOn(game -> game.untilMinute() > 51)
        .noneMatch(game -> game.isOf(EARLY.id()));
  }

  @Test
  void drillForFour_whereTheFourthComesLate_isNotPlannedBefore_andWhyNotSaysSo() {
    List<Attendee> four = new ArrayList<>(ToyDrills.players(4));
    four.set(3, four.get(3).during(Stay.from(70)));
    List<Drill> drills = new ArrayList<>(ToyDrills.all());
    drills.add(ToyDrills.doubles("doubles", Skill.DINK));
    PlanProblem problem = PlanProblem.of(four, drills, SessionWish.of(90, 2));
    PlanAnswer.Planned planned = ToyDrills.planned(problem);
    assertThat(planned.check().brokenRules()).isEmpty();
    assertThat(planned.plan().blocks()).noneMatch(block -> block.drill().value().equals("doubles"));
    WhyNot.Answer why = WhyNot.of(problem).about(planned.plan(), new DrillKey("doubles"));
    assertThat(why)
        .isInstanceOfSatisfying(
            WhyNot.AgainstARule.class,
            answer -> assertThat(answer.rule()).isEqualTo(PlanRule.PRESENCE));
    assertThat(why.sentence()).contains("too few are there");
    PlanEdit early =
        PlanEditor.of(problem).add(planned.plan(), new DrillKey("doubles"), Line.STRAIGHT, 3);
    assertThat(((PlanEdit.Refused) early).sentence()).contains("Too few are there");
  }

  @Test
  void reason_namesOnlyThoseWhoAreThere() {
    List<Attendee> players = new ArrayList<>(ToyDrills.players(4));
    players.set(3, ToyDrills.with(players.get(3), Skill.DINK, -3).during(Stay.from(60)));
    PlanProblem problem = PlanProblem.of(players, ToyDrills.all(), SessionWish.of(90, 2));
    for (PlannedBlock block : ToyDrills.planned(problem).plan().blocks()) {
      boolean plays =
          block.games().stream()
              .anyMatch(
                  game ->
                      game.a().players().contains(players.get(3).id())
                          || game.b().players().contains(players.get(3).id()));
      if (!block.games().isEmpty() && !plays) {
        assertThat(block.reason()).doesNotContain("P3");
      }
    }
  }

  @Test
  void test_isTimedForThoseWhoAreThere() {
    Requests tests = Requests.NONE.withYardsticks(new YardstickWish.Every(1, 0));
    List<Attendee> five = new ArrayList<>(ToyDrills.players(5));
    PlanProblem all = withTest(five, tests);
    five.set(4, five.get(4).during(Stay.from(40)));
    assertThat(testMinutes(withTest(five, tests))).isLessThan(testMinutes(all));
  }

  private static PlanProblem withTest(List<Attendee> players, Requests tests) {
    return PlanProblem.of(players, ToyDrills.all(), SessionWish.of(100, 1).withRequests(tests))
        .withYardsticks(List.of(ToyDrills.yardstick("drops-test", Skill.DROP)));
  }

  private static double testMinutes(PlanProblem problem) {
    PlanAnswer.Planned planned = ToyDrills.planned(problem);
    assertThat(planned.check().brokenRules()).isEmpty();
    Optional<PlannedBlock> test =
        planned.plan().blocks().stream().filter(b -> b.kind() == Kind.YARDSTICK).findFirst();
    return test.orElseThrow().time().mean();
  }

  @Test
  void stay_thatEndsBeforeItBegins_isRefused() {
    assertThat(catchThrowable(() -> new Stay(40, 40))).hasMessageContaining("swap the two times");
    assertThat(catchThrowable(() -> new Stay(-1, 40))).hasMessageContaining("from 0 to 480");
    assertThat(Stay.THROUGHOUT.words()).isEqualTo("throughout");
    assertThat(new Stay(10, 60).words()).isEqualTo("from minute 10 to 60");
  }
}
