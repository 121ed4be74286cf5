package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.Limit;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.PlanEditor.WarmUpRemoval;
import rallywright.engine.plan.PlannedBlock.Kind;

class SessionPlannerTest {

  private static final List<Attendee> FOUR = ToyDrills.players(4);

  private static PlanProblem problem(List<Attendee> players, SessionWish wish) {
    return PlanProblem.of(players, ToyDrills.all(), wish);
  }

  private static SessionPlan plan(List<Attendee> players, int minutes) {
    return ToyDrills.planned(problem(players, SessionWish.of(minutes, 1))).plan();
  }

  @Test
  void warmUps_comeFirstInTheirOrder() {
    assertThat(plan(FOUR, 60).blocks().subList(0, 3))
        .extracting(block -> block.drill().value())
        .containsExactly("general", "paddle", "volleys");
  }

  @Test
  void longSession_hasAWaterBreak_shortOneHasNone() {
    assertThat(plan(FOUR, 100).blocks()).anyMatch(block -> block.kind() == Kind.BREAK);
    SessionWish easy = SessionWish.of(45, 1).withMaxHardMinutes(60);
    assertThat(ToyDrills.planned(problem(FOUR, easy)).plan().blocks())
        .noneMatch(block -> block.kind() == Kind.BREAK);
  }

  @Test
  void session_endsWithAFullGame() {
    List<PlannedBlock> blocks = plan(FOUR, 60).blocks();
    assertThat(blocks.get(blocks.size() - 1).kind()).isEqualTo(Kind.FULL_GAME);
  }

  @Test
  void everyBlock_hasAReasonThatNamesSomebody() {
    assertThat(plan(FOUR, 60).blocks())
        .filteredOn(block -> !block.games().isEmpty())
        .allSatisfy(block -> assertThat(block.reason()).containsPattern("P[0-3]"));
  }

  @Test
  void playerWhoMustNotStrikeOverheads_onlyLobs() {
    List<Attendee> players = new ArrayList<>(FOUR);
    Attendee spared = FOUR.get(0);
    players.set(0, new Attendee(spared.id(), spared.standing(), Set.of(Limit.NO_OVERHEADS)));
    List<Drill> drills = new ArrayList<>(ToyDrills.warmUps());
    drills.add(ToyDrills.overheads());
    SessionWish wish = SessionWish.of(60, 1).withCoverage(Coverage.NEEDS);
    SessionPlan plan = ToyDrills.planned(PlanProblem.of(players, drills, wish)).plan();
    List<PlannedGame> games =
        plan.blocks().stream().flatMap(block -> block.games().stream()).toList();
    assertThat(games).anyMatch(game -> game.a().players().contains(spared.id()));
    assertThat(games).noneMatch(game -> game.b().players().contains(spared.id()));
  }

  @Test
  void moreNeed_neverBringsFewerMinutes() {
    List<Drill> drills = new ArrayList<>(ToyDrills.warmUps());
    drills.add(ToyDrills.even("dinks", Skill.DINK, Progression.LINE, Intensity.EASY));
    drills.add(ToyDrills.even("drops", Skill.DROP, Progression.BASELINE, Intensity.EASY));
    SessionWish wish = SessionWish.of(60, 1).withCoverage(Coverage.NEEDS);
    double before = 0;
    for (double mean : new double[] {1.5, 0.5, 0, -0.5, -1.5}) {
      List<Attendee> players =
          FOUR.stream().map(each -> ToyDrills.with(each, Skill.DINK, mean)).toList();
      PlanProblem problem =
          new PlanProblem(
              players,
              drills,
              wish,
              PlanKnowledge.firstIdeas(players).withFairStarts(FairStarts.LOVE_ALL));
      double minutes =
          ToyDrills.minutesByDrill(ToyDrills.planned(problem).plan()).getOrDefault("dinks", 0.0);
      assertThat(minutes).isGreaterThanOrEqualTo(before);
      before = minutes;
    }
    assertThat(before).isPositive();
  }

  @Test
  void changedStanding_changesThePlanForAReason() {
    List<Attendee> after =
        FOUR.stream().map(each -> ToyDrills.with(each, Skill.RESET, -1.5)).toList();
    SessionPlan first = plan(FOUR, 60);
    SessionPlan second = plan(after, 60);
    assertThat(ToyDrills.minutesByDrill(second)).isNotEqualTo(ToyDrills.minutesByDrill(first));
    assertThat(second.blocks())
        .filteredOn(block -> block.drill().value().equals("resets"))
        .isNotEmpty()
        .allSatisfy(
            block ->
                assertThat(block.reason())
                    .contains("rallies in 10 that turn on the reset", "practised for 3 weeks"));
  }

  @Test
  void editing_givesANewPlanAndKeepsWhatWasNotTouched() {
    PlanProblem problem = problem(FOUR, SessionWish.of(90, 1));
    SessionPlan plan = ToyDrills.planned(problem).plan();
    PlanEditor editor = PlanEditor.of(problem);
    PlannedBlock last = plan.blocks().get(plan.blocks().size() - 1);
    PlanEdit.Changed more = (PlanEdit.Changed) editor.moreGames(plan, last.id());
    assertThat(more.plan().blocks().subList(0, plan.blocks().size() - 1))
        .isEqualTo(plan.blocks().subList(0, plan.blocks().size() - 1));
    assertThat(more.check().clock().minutesMean())
        .isGreaterThan(editor.check(plan).clock().minutesMean());
    PlanEdit.Changed back = (PlanEdit.Changed) editor.fewerGames(more.plan(), last.id());
    assertThat(back.plan()).isEqualTo(plan);
    PlanEdit.Changed moved = (PlanEdit.Changed) editor.move(plan, last.id(), 0);
    assertThat(moved.check().brokenRules())
        .extracting(PlanCheck.BrokenRule::rule)
        .contains(PlanRule.WARM_UP_FIRST, PlanRule.FROM_THE_LINE_BACK);
    PlanEdit.Changed replaced =
        (PlanEdit.Changed) editor.replace(plan, last.id(), new DrillKey("dinks"), Line.CROSS);
    assertThat(replaced.check().brokenRules()).isNotEmpty();
  }

  @Test
  void editing_thatIsNotPossible_saysWhy() {
    PlanProblem problem = problem(FOUR, SessionWish.of(60, 1));
    SessionPlan plan = ToyDrills.planned(problem).plan();
    PlanEditor editor = PlanEditor.of(problem);
    BlockId warmUp = plan.blocks().get(0).id();
    List<PlanEdit> refused =
        List.of(
            editor.remove(plan, warmUp, WarmUpRemoval.NOT_CONFIRMED),
            editor.moreGames(plan, warmUp),
            editor.move(plan, warmUp, 99),
            editor.add(plan, new DrillKey("nothing"), Line.CROSS, 0),
            editor.fewerGames(plan, new BlockId("gone")));
    assertThat(refused)
        .allSatisfy(
            each ->
                assertThat(((PlanEdit.Refused) each).sentence()).containsPattern("Maybe .*\\."));
    PlanEdit gone = editor.remove(plan, warmUp, WarmUpRemoval.CONFIRMED);
    assertThat(gone).isInstanceOf(PlanEdit.Changed.class);
  }

  @Test
  void planMadeAnew_keepsIdsOfWhatStays() {
    PlanProblem problem = problem(FOUR, SessionWish.of(90, 1));
    SessionPlan plan = ToyDrills.planned(problem).plan();
    PlanAnswer anew = SessionPlanner.planAnew(problem, plan);
    assertThat(((PlanAnswer.Planned) anew).plan()).isEqualTo(plan);
  }
}
