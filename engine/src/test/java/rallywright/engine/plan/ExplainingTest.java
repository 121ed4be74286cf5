package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.PlannedBlock.Kind;
import rallywright.engine.practice.PlayerStanding;

/** A plan explains itself, is mended with few changes and shortened where it hurts least. */
class ExplainingTest {

  private static final List<Attendee> FOUR = ToyDrills.players(4);
  private static final SessionWish WISH = SessionWish.of(90, 1);
  private static final PlanProblem PROBLEM = PlanProblem.of(FOUR, ToyDrills.all(), WISH);
  private static final SessionPlan PLAN = ToyDrills.planned(PROBLEM).plan();

  @Test
  void reason_saysWhoWhatAndHowManyGames() {
    assertThat(PLAN.blocks())
        .filteredOn(block -> !block.games().isEmpty())
        .allSatisfy(
            block -> assertThat(block.reason()).containsPattern("P[0-3].*worth about .* in 100"));
  }

  @Test
  void reason_beginsWithWhatSomebodyLacks_notWithAGuestOfWhomLittleIsKnown() {
    List<Attendee> players = new ArrayList<>(ToyDrills.players(4));
    for (Skill skill : Skill.values()) {
      players.set(1, ToyDrills.with(players.get(1), skill, skill == Skill.DINK ? -1.2 : 0.4));
    }
    players.set(
        0,
        new Attendee(
            players.get(0).id(), PlayerStanding.newcomer("P0", Optional.empty()), Set.of()));
    PlanProblem problem = PlanProblem.of(players, ToyDrills.all(), SessionWish.of(90, 2));
    List<String> reasons =
        ToyDrills.planned(problem).plan().blocks().stream()
            .filter(block -> !block.games().isEmpty())
            .map(PlannedBlock::reason)
            .toList();
    assertThat(reasons).anyMatch(reason -> reason.contains("P1 loses"));
    assertThat(reasons)
        .filteredOn(reason -> reason.contains("P1 loses"))
        .allMatch(reason -> !reason.contains("Too early to tell about P0"));
    assertThat(reasons).anyMatch(reason -> reason.contains("Also for P0"));
  }

  /**
   * By hand: a game has about 46 rallies with a spread of 6.8 in the difference won; a skill that
   * decided a tenth of them would shift it by 46 x 0.1 x 0.45 / 2 x 0.25 x 2 = 0.5: 3 games in 100.
   */
  @Test
  void halfALevelInASkill_isWorthAFewGamesInAHundred() {
    PlayerStanding player = PlayerStanding.newcomer("P", Optional.empty());
    for (Skill skill : Skill.values()) {
      assertThat(GamesPerHundred.of(player).in(skill)).as(skill.words()).isBetween(0.0, 15.0);
    }
    assertThat(GamesPerHundred.of(player).in(Skill.DROP))
        .isBetween(1.0, 10.0)
        .isGreaterThan(GamesPerHundred.of(player).in(Skill.LOB));
  }

  @Test
  void whyNot_aDrillOfThePlan_givesItsReason() {
    PlannedBlock block = PLAN.blocks().get(PLAN.blocks().size() - 1);
    WhyNot.Answer answer = WhyNot.of(PROBLEM).about(PLAN, block.drill());
    assertThat(answer).isInstanceOf(WhyNot.InThePlan.class);
    assertThat(answer.sentence()).contains(block.reason());
  }

  @Test
  void whyNot_aDrillThatARuleStandsAgainst_namesTheRule() {
    List<Drill> drills = new ArrayList<>(ToyDrills.all());
    drills.add(ToyDrills.doubles("doubles", Skill.DINK));
    DrillKey dinks = new DrillKey("dinks");
    PlanProblem problem =
        PlanProblem.of(ToyDrills.players(3), drills, WISH)
            .withWish(WISH.withRequests(Requests.NONE.without(dinks)));
    SessionPlan plan = ToyDrills.planned(problem).plan();
    WhyNot why = WhyNot.of(problem);
    assertThat(why.about(plan, dinks))
        .isInstanceOfSatisfying(
            WhyNot.AgainstARule.class,
            each -> assertThat(each.rule()).isEqualTo(PlanRule.FORBIDDEN));
    assertThat(why.about(plan, new DrillKey("doubles")).sentence())
        .contains("needs 4 players, 3 are there");
    assertThat(why.about(plan, new DrillKey("nothing")).sentence()).contains("by themselves");
  }

  @Test
  void whyNot_aDrillThatBringsLess_tellsTheLoss() {
    List<Attendee> players = FOUR.stream().map(each -> ToyDrills.with(each, Skill.LOB, 3)).toList();
    PlanProblem problem = PlanProblem.of(players, ToyDrills.all(), SessionWish.of(60, 1));
    SessionPlan plan = ToyDrills.planned(problem).plan();
    assertThat(plan.blocks()).noneMatch(block -> block.drill().value().equals("lobs"));
    WhyNot.Answer answer = WhyNot.of(problem).about(plan, new DrillKey("lobs"));
    assertThat(answer)
        .isInstanceOfSatisfying(
            WhyNot.Costs.class, each -> assertThat(each.share()).isGreaterThanOrEqualTo(0));
    assertThat(answer.sentence()).contains("The lobs");
  }

  @Test
  void repair_ofAValidPlan_changesNothing() {
    PlanRepair.Repaired repaired = PlanRepair.of(PROBLEM).repair(PLAN);
    assertThat(repaired.changes()).isEmpty();
    assertThat(repaired.plan()).isEqualTo(PLAN);
  }

  @Test
  void repair_ofOneFault_isOneChange() {
    SessionPlan cold =
        PLAN.withBlocks(
            PLAN.blocks().stream().filter(each -> each.kind() != Kind.WARM_UP).toList());
    PlanRepair.Repaired warm = PlanRepair.of(PROBLEM).repair(cold);
    assertThat(warm.check().brokenRules()).isEmpty();
    assertThat(warm.changes()).containsExactly("Put the warm-ups first.");
    PlanEditor editor = PlanEditor.of(PROBLEM);
    PlannedBlock last = PLAN.blocks().get(PLAN.blocks().size() - 1);
    SessionPlan mixed = ((PlanEdit.Changed) editor.move(PLAN, last.id(), 3)).plan();
    PlanRepair.Repaired sorted = PlanRepair.of(PROBLEM).repair(mixed);
    assertThat(sorted.check().brokenRules()).isEmpty();
    assertThat(sorted.changes()).hasSize(1);
  }

  @Test
  void repair_ofTooLongAPlan_takesOutFewRounds() {
    PlanEditor editor = PlanEditor.of(PROBLEM);
    SessionPlan longer = PLAN;
    PlannedBlock last = PLAN.blocks().get(PLAN.blocks().size() - 1);
    for (int i = 0; i < 2; i++) {
      longer = ((PlanEdit.Changed) editor.moreGames(longer, last.id())).plan();
    }
    PlanRepair.Repaired repaired = PlanRepair.of(PROBLEM).repair(longer);
    assertThat(repaired.check().brokenRules()).isEmpty();
    assertThat(repaired.changes()).isNotEmpty().hasSizeLessThanOrEqualTo(2);
  }

  @Test
  void lateStart_dropsWhatBringsLeastAndKeepsWarmUpsAndWhatIsBegun() {
    PlanRepair repair = PlanRepair.of(PROBLEM);
    PlanRepair.Repaired shorter = repair.shorten(PLAN, 65, 4);
    assertThat(shorter.check().clock().minutesReserved()).isLessThanOrEqualTo(65);
    assertThat(shorter.plan().blocks().subList(0, 4)).isEqualTo(PLAN.blocks().subList(0, 4));
    assertThat(shorter.changes()).isNotEmpty();
    assertThat(shorter.plan().minutes()).isEqualTo(65);
    assertThat(repair.leastValuable(PLAN)).isPresent();
  }
}
