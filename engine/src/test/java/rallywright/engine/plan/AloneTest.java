package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.PlannedBlock.Kind;

/** One player alone, and one player with a coach who plays or feeds. */
class AloneTest {

  private static final List<Attendee> ONE = ToyDrills.players(1);

  private static PlanProblem problem(int minutes) {
    return PlanProblem.of(ONE, ToyDrills.all(), SessionWish.of(minutes, 1))
        .withYardsticks(
            List.of(
                ToyDrills.yardstick("serves", Skill.SERVE),
                ToyDrills.yardstick("drops", Skill.DROP)));
  }

  @Test
  void onePlayer_warmsUpAndStrikesTestsInTurn() {
    PlanAnswer.Planned planned = ToyDrills.planned(problem(40));
    assertThat(planned.check().brokenRules()).isEmpty();
    assertThat(planned.check().clock().fits()).isTrue();
    assertThat(planned.plan().blocks().subList(0, 3)).allMatch(b -> b.kind() == Kind.WARM_UP);
    List<String> tests =
        planned.plan().blocks().stream()
            .filter(block -> block.kind() == Kind.YARDSTICK)
            .map(block -> block.drill().value())
            .toList();
    assertThat(tests).hasSizeGreaterThanOrEqualTo(4).contains("serves", "drops");
    assertThat(tests.get(0)).isNotEqualTo(tests.get(1));
    assertThat(planned.check().benefit()).isPositive().isEqualTo(planned.check().bound());
    assertThat(planned.check().gapWords()).isEqualTo("No better plan is possible.");
    assertThat(planned.check().notes()).contains(new PlanNote.Alone());
  }

  @Test
  void rounds_areLimitedAndLongSessionsHaveWater() {
    PlanAnswer.Planned planned = ToyDrills.planned(problem(110));
    assertThat(planned.plan().blocks())
        .filteredOn(block -> block.drill().value().equals("serves"))
        .hasSize(Alone.MOST_ROUNDS);
    assertThat(planned.check().brokenRules()).isEmpty();
  }

  @Test
  void onePlayer_canChangeThePlanByHand() {
    PlanProblem problem = problem(40);
    SessionPlan plan = ToyDrills.planned(problem).plan();
    PlanEditor editor = PlanEditor.of(problem);
    BlockId last = plan.blocks().get(plan.blocks().size() - 1).id();
    PlanEdit.Changed less =
        (PlanEdit.Changed) editor.remove(plan, last, PlanEditor.WarmUpRemoval.NOT_CONFIRMED);
    assertThat(less.check().benefit()).isLessThan(editor.check(plan).benefit());
    assertThat(less.check().bound()).isEqualTo(editor.check(plan).benefit());
    PlanEdit more = editor.add(plan, ToyDrills.all().get(3).key(), Line.CROSS, 3);
    assertThat(((PlanEdit.Refused) more).sentence()).contains("needs 2 players, 1 is there");
  }

  @Test
  void onePlayer_whereEveryDrillNeedsSomebody_isToldToLetTheCoachPlay() {
    PlanProblem bare = PlanProblem.of(ONE, ToyDrills.all(), SessionWish.of(60, 1));
    PlanAnswer answer = SessionPlanner.plan(bare);
    assertThat(((PlanAnswer.Refused) answer).sentences())
        .containsExactly(
            "1 player is there, and every drill here needs somebody else. Maybe let the coach play"
                + " or feed as one more, counted or not.");
  }

  @Test
  void onePlayer_withTheCoachAsOneMore_getsAWholePlan() {
    Attendee coach =
        new Attendee(new PlayerId("Coach"), ONE.get(0).standing(), ONE.get(0).limits());
    for (Attendee other : List.of(coach.fillingIn(), coach.withWeight(0), coach)) {
      PlanProblem problem =
          PlanProblem.of(List.of(ONE.get(0), other), ToyDrills.all(), SessionWish.of(60, 1));
      PlanAnswer.Planned planned = ToyDrills.planned(problem);
      assertThat(planned.check().brokenRules()).isEmpty();
      assertThat(planned.plan().blocks()).anyMatch(block -> block.kind() == Kind.FULL_GAME);
    }
  }

  @Test
  void minutes_tooFewForARound_areAnsweredInASentence() {
    PlanProblem brief =
        PlanProblem.of(ONE, ToyDrills.all(), SessionWish.of(10, 1).withConfidence(0.99))
            .withYardsticks(List.of(ToyDrills.yardstick("serves", Skill.SERVE)));
    Optional<PlanAnswer> answer = Optional.of(SessionPlanner.plan(brief));
    assertThat(answer.get().toString()).contains("10 minutes are too few", "Maybe book");
  }
}
