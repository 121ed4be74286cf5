package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.Limit;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;

class SeatSwapTest {

  private static final List<Attendee> FIVE = ToyDrills.players(5);
  private static final PlayerId LATE = FIVE.get(4).id();

  /** A plan for four of five; the fifth came late. */
  private static SessionPlan joined() {
    return ToyDrills.planned(
            PlanProblem.of(FIVE.subList(0, 4), ToyDrills.all(), SessionWish.of(60, 1)))
        .plan()
        .withArrival(LATE);
  }

  private static PlanEditor editor() {
    return PlanEditor.of(PlanProblem.of(FIVE, ToyDrills.all(), SessionWish.of(60, 1)));
  }

  private static PlannedBlock withGames(SessionPlan plan) {
    return plan.blocks().stream()
        .filter(block -> !block.games().isEmpty())
        .findFirst()
        .orElseThrow();
  }

  private static String refusal(PlanEdit edit) {
    return edit instanceof PlanEdit.Refused refused ? refused.sentence() : "changed";
  }

  @Test
  void arrival_sitsOutEverywhereAndTakesNobodysSeat() {
    SessionPlan plan = joined();
    assertThat(plan.present()).hasSize(5).endsWith(LATE);
    assertThat(plan.withArrival(LATE)).isEqualTo(plan);
    assertThat(plan.blocks())
        .allSatisfy(
            block ->
                assertThat(block.sitting()).allSatisfy(turn -> assertThat(turn).contains(LATE)));
    assertThat(editor().check(plan).brokenRules())
        .extracting(PlanCheck.BrokenRule::rule)
        .doesNotContain(PlanRule.EVERYONE_ONCE);
  }

  @Test
  void arrival_thatChangesPlaces_playsThatGameAndTheOtherSitsOut() {
    SessionPlan plan = joined();
    PlannedBlock block = withGames(plan);
    PlannedGame game = block.games().get(0);
    PlayerId out = game.a().players().get(0);

    PlanEdit edit = editor().swapSeats(plan, new SeatSwap(block.id(), game.turn(), out, LATE));

    assertThat(edit).isInstanceOf(PlanEdit.Changed.class);
    PlannedBlock after = ((PlanEdit.Changed) edit).plan().block(block.id()).orElseThrow();
    PlannedGame changed = after.games().get(0);
    assertThat(changed.a().players()).containsExactly(LATE);
    assertThat(changed.b()).isEqualTo(game.b());
    assertThat(changed.id()).isNotEqualTo(game.id());
    assertThat(after.sitting().get(game.turn() - 1)).contains(out).doesNotContain(LATE);
    assertThat(after.games().subList(1, after.games().size()))
        .isEqualTo(block.games().subList(1, block.games().size()));
  }

  @Test
  void swappingTwice_givesTheFirstPlan() {
    SessionPlan plan = joined();
    PlannedBlock block = withGames(plan);
    SeatSwap swap = new SeatSwap(block.id(), 1, plan.present().get(0), plan.present().get(3));
    PlanEdit once = editor().swapSeats(plan, swap);
    assertThat(once).isInstanceOf(PlanEdit.Changed.class);
    SessionPlan between = ((PlanEdit.Changed) once).plan();
    assertThat(between).isNotEqualTo(plan);
    PlanEdit twice = editor().swapSeats(between, swap);
    assertThat(((PlanEdit.Changed) twice).plan().block(block.id()).orElseThrow().games())
        .isEqualTo(block.games());
  }

  @Test
  void swapsThatCannotBe_areAnsweredInASentence() {
    SessionPlan plan = joined();
    PlannedBlock block = withGames(plan);
    PlayerId one = plan.present().get(0);
    PlayerId stranger = new PlayerId("stranger");
    PlanEditor editor = editor();
    assertThat(refusal(editor.swapSeats(plan, new SeatSwap(block.id(), 1, one, one))))
        .contains("chosen twice");
    assertThat(refusal(editor.swapSeats(plan, new SeatSwap(block.id(), 1, one, stranger))))
        .contains("not in this session");
    assertThat(refusal(editor.swapSeats(plan, new SeatSwap(block.id(), 99, one, LATE))))
        .contains("(99) must be from 1 to");
    assertThat(refusal(editor.swapSeats(plan, new SeatSwap(new BlockId("no"), 1, one, LATE))))
        .contains("no block");
    BlockId warmUp = plan.blocks().get(0).id();
    assertThat(refusal(editor.swapSeats(plan, new SeatSwap(warmUp, 1, one, LATE))))
        .contains("has no games");
  }

  @Test
  void playerWithALimit_isNotPutWhereItForbids_andTheLimitIsNotNamed() {
    List<Attendee> players = new ArrayList<>(FIVE);
    players.set(4, new Attendee(LATE, FIVE.get(4).standing(), Set.of(Limit.NO_OVERHEADS)));
    List<Drill> drills = new ArrayList<>(ToyDrills.warmUps());
    drills.add(ToyDrills.overheads());
    SessionWish wish = SessionWish.of(60, 1).withCoverage(Coverage.NEEDS);
    SessionPlan plan =
        ToyDrills.planned(PlanProblem.of(players.subList(0, 4), drills, wish))
            .plan()
            .withArrival(LATE);
    PlannedBlock block = withGames(plan);
    PlayerId strikes = block.games().get(0).b().players().get(0);
    PlanEditor editor = PlanEditor.of(PlanProblem.of(players, drills, wish));
    assertThat(refusal(editor.swapSeats(plan, new SeatSwap(block.id(), 1, strikes, LATE))))
        .contains("is not planned for this part", "somebody else")
        .doesNotContain("overhead");
    assertThat(editor.spared(block)).isEmpty();
  }

  @Test
  void playerWhomALimitKeepsFromEveryRole_isSaidToBeSpared() {
    List<Attendee> players = new ArrayList<>(FIVE);
    players.set(4, new Attendee(LATE, FIVE.get(4).standing(), Set.of(Limit.EASY_ONLY)));
    PlanEditor editor =
        PlanEditor.of(PlanProblem.of(players, ToyDrills.all(), SessionWish.of(60, 1)));
    SessionPlan plan =
        ToyDrills.planned(PlanProblem.of(players, ToyDrills.all(), SessionWish.of(60, 1))).plan();
    PlanEdit added = editor.add(plan, new DrillKey("hands"), Line.STRAIGHT, plan.blocks().size());
    List<PlannedBlock> blocks = ((PlanEdit.Changed) added).plan().blocks();
    assertThat(editor.spared(blocks.get(blocks.size() - 1))).containsExactly(LATE);
    assertThat(editor.spared(blocks.get(0))).isEmpty();
  }
}
