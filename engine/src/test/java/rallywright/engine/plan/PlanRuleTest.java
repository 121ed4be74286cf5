package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.Limit;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.plan.PlanEditor.WarmUpRemoval;
import rallywright.engine.plan.PlannedBlock.Kind;

/** Every rule by its name: a plan keeps to it, and a plan that does not is told. */
class PlanRuleTest {

  private static final List<Attendee> FOUR = ToyDrills.players(4);
  private static final SessionWish WISH = SessionWish.of(90, 1);
  private static final PlanProblem PROBLEM = ToyDrills.problem(FOUR, ToyDrills.all(), WISH);
  private static final SessionPlan PLAN = ToyDrills.planned(PROBLEM).plan();

  private static List<PlanRule> broken(PlanProblem problem, SessionPlan plan) {
    return PlanEditor.of(problem).check(plan).brokenRules().stream()
        .map(PlanCheck.BrokenRule::rule)
        .toList();
  }

  private static List<PlanRule> broken(SessionPlan plan) {
    return broken(PROBLEM, plan);
  }

  private static SessionPlan planned(PlanProblem problem) {
    PlanAnswer.Planned planned = ToyDrills.planned(problem);
    assertThat(planned.check().brokenRules()).isEmpty();
    return planned.plan();
  }

  private static PlanProblem with(Requests requests) {
    return PROBLEM.withWish(WISH.withRequests(requests));
  }

  private static SessionPlan without(SessionPlan plan, Kind kind) {
    return plan.withBlocks(plan.blocks().stream().filter(each -> each.kind() != kind).toList());
  }

  private static Set<String> drills(SessionPlan plan) {
    Set<String> keys = new TreeSet<>();
    plan.blocks().forEach(block -> keys.add(block.drill().value()));
    return keys;
  }

  private static SessionPlan edited(PlanEdit edit) {
    return ((PlanEdit.Changed) edit).plan();
  }

  private static PlannedBlock firstGames(SessionPlan plan) {
    return plan.blocks().stream().filter(each -> !each.games().isEmpty()).findFirst().orElseThrow();
  }

  private static SessionPlan withGames(SessionPlan plan, List<PlannedGame> games) {
    PlannedBlock old = firstGames(plan);
    return plan.withBlocks(
        plan.blocks().stream()
            .map(each -> each.equals(old) ? old.withGames(old.end(), games, old.sitting()) : each)
            .toList());
  }

  @Test
  void thePlanOfTheTests_breaksNoRule() {
    assertThat(broken(PLAN)).isEmpty();
    for (PlanRule rule : PlanRule.values()) {
      assertThat(rule.words()).isNotBlank();
      assertThat(rule.sentence()).endsWith(".");
    }
  }

  @Test
  void bookedTime_isKeptWithTheWishedChance() {
    PlanEditor editor = PlanEditor.of(PROBLEM);
    SessionPlan longer = PLAN;
    for (int i = 0; i < 3; i++) {
      longer = edited(editor.moreGames(longer, firstGames(longer).id()));
    }
    assertThat(broken(longer)).contains(PlanRule.BOOKED_TIME);
  }

  @Test
  void warmUpFirst_missingOrLate_isTold() {
    assertThat(broken(without(PLAN, Kind.WARM_UP))).contains(PlanRule.WARM_UP_FIRST);
    List<PlannedBlock> late = new ArrayList<>(PLAN.blocks());
    late.add(late.remove(0));
    assertThat(broken(PLAN.withBlocks(late))).contains(PlanRule.WARM_UP_FIRST);
  }

  @Test
  void fromTheLineBack_fullGameFirst_isTold() {
    List<PlannedBlock> blocks = new ArrayList<>(PLAN.blocks());
    PlannedBlock last = blocks.remove(blocks.size() - 1);
    assertThat(last.kind()).isEqualTo(Kind.FULL_GAME);
    blocks.add(3, last);
    assertThat(broken(PLAN.withBlocks(blocks))).contains(PlanRule.FROM_THE_LINE_BACK);
  }

  @Test
  void hardMinutes_inARow_areLimited() {
    PlanProblem strict = PROBLEM.withWish(WISH.withMaxHardMinutes(6).withSeed(3));
    SessionPlan plan = planned(strict);
    double run = 0;
    for (PlannedBlock block : plan.blocks()) {
      boolean hard = Set.of("hands", "speed-ups").contains(block.drill().value());
      run = hard ? run + block.time().mean() : 0;
      assertThat(run).isLessThanOrEqualTo(6.5);
    }
    SessionPlan hard = planned(with(pinned("hands", Line.CROSS, 4)));
    assertThat(broken(strict, hard)).contains(PlanRule.HARD_MINUTES);
  }

  private static Requests pinned(String drill, Line line, int rounds) {
    return Requests.NONE.with(new Slot.Pinned(new DrillKey(drill), line, rounds));
  }

  @Test
  void waterBreak_missingInALongSession_isTold() {
    assertThat(broken(without(PLAN, Kind.BREAK))).contains(PlanRule.WATER_BREAK);
  }

  @Test
  void rests_inTheHeat_comeAsOftenAsAskedFor() {
    PlanProblem hot = with(Requests.NONE.withRests(new Requests.Rests(20, 5)));
    SessionPlan plan = planned(hot);
    assertThat(plan.blocks())
        .filteredOn(block -> block.kind() == Kind.BREAK)
        .hasSizeGreaterThanOrEqualTo(2)
        .allSatisfy(block -> assertThat(block.time().mean()).isEqualTo(5));
    assertThat(broken(hot, without(plan, Kind.BREAK))).contains(PlanRule.RESTS);
  }

  @Test
  void coverage_ofEverySkillGroup_isKeptWhenAskedFor() {
    SessionPlan soft =
        PLAN.withBlocks(
            PLAN.blocks().stream()
                .filter(each -> each.games().isEmpty() || each.drill().value().equals("dinks"))
                .toList());
    assertThat(broken(soft)).contains(PlanRule.COVERAGE);
    PlanProblem needs = PROBLEM.withWish(WISH.withCoverage(Coverage.NEEDS));
    assertThat(broken(needs, soft)).doesNotContain(PlanRule.COVERAGE);
  }

  @Test
  void directions_ofADrill_areUsedAlike() {
    PlanEditor editor = PlanEditor.of(PROBLEM);
    SessionPlan plan = edited(editor.add(PLAN, new DrillKey("dinks"), Line.CROSS, 3));
    BlockId added = plan.blocks().get(3).id();
    plan = edited(editor.moreGames(edited(editor.moreGames(plan, added)), added));
    plan = edited(editor.moreGames(edited(editor.moreGames(plan, added)), added));
    assertThat(broken(plan)).contains(PlanRule.DIRECTIONS);
  }

  @Test
  void bothRoles_ofAnUnevenDrill_areTaken() {
    PlanProblem uneven = with(pinned("drops", Line.CROSS, 1));
    SessionPlan plan = planned(uneven);
    List<PlannedBlock> halved =
        plan.blocks().stream()
            .map(
                block ->
                    block.drill().value().equals("drops")
                        ? block.withGames(
                            block.end(),
                            block.games().stream().filter(game -> game.turn() % 2 == 1).toList(),
                            block.sitting())
                        : block)
            .toList();
    assertThat(broken(uneven, plan.withBlocks(halved))).contains(PlanRule.BOTH_ROLES);
  }

  @Test
  void limits_noOverheadsAndNoLunging_areRespected() {
    Attendee spared =
        new Attendee(FOUR.get(0).id(), FOUR.get(0).standing(), Set.of(Limit.NO_OVERHEADS));
    List<Attendee> players = new ArrayList<>(FOUR);
    players.set(0, spared);
    PlanProblem problem = ToyDrills.problem(players, ToyDrills.all(), WISH);
    SessionPlan plan = planned(problem);
    assertThat(plan.blocks())
        .filteredOn(block -> block.drill().value().equals("lobs"))
        .allSatisfy(
            block ->
                assertThat(block.games())
                    .noneMatch(game -> game.b().players().contains(spared.id())));
    SessionPlan careless = planned(with(pinned("lobs", Line.CROSS, 4)));
    assertThat(broken(problem, careless)).contains(PlanRule.LIMITS);
  }

  @Test
  void limits_noLunging_keepARoleFromAPlayer() {
    List<Drill> drills = new ArrayList<>(ToyDrills.all());
    drills.add(ToyDrills.lunging("wide-dinks"));
    List<Attendee> players = new ArrayList<>(FOUR);
    players.set(
        1, new Attendee(FOUR.get(1).id(), FOUR.get(1).standing(), Set.of(Limit.NO_LUNGING)));
    SessionWish wish = WISH.withRequests(pinned("wide-dinks", Line.CROSS, 2));
    SessionPlan plan = planned(ToyDrills.problem(players, drills, wish));
    PlayerId spared = players.get(1).id();
    assertThat(plan.blocks())
        .filteredOn(block -> block.drill().value().equals("wide-dinks"))
        .isNotEmpty()
        .allSatisfy(
            block ->
                assertThat(block.games()).noneMatch(game -> game.b().players().contains(spared)));
  }

  @Test
  void lastLane_ofABlock_isTheMaximumOverItsLanes() {
    Requests lastLane = Requests.NONE.withEnds(Requests.Ends.LAST_LANE);
    double two = minutesOfDinks(4, 1, lastLane);
    double twelve = minutesOfDinks(24, 6, lastLane);
    assertThat(two).isGreaterThan(minutesOfDinks(2, 1, lastLane));
    assertThat(twelve).isGreaterThan(1.1 * two);
  }

  /** How long one round of dinks takes among equals. */
  private static double minutesOfDinks(int players, int courts, Requests requests) {
    List<Attendee> equals =
        ToyDrills.players(players).stream()
            .map(each -> ToyDrills.with(each, Skill.DINK, 0))
            .toList();
    PlanProblem problem =
        ToyDrills.problem(
            equals, ToyDrills.all(), SessionWish.of(90, courts).withRequests(requests));
    SessionPlan plan = ToyDrills.planned(problem).plan();
    PlanEdit added = PlanEditor.of(problem).add(plan, new DrillKey("dinks"), Line.STRAIGHT, 0);
    return edited(added).blocks().get(0).time().mean();
  }

  @Test
  void lanesOfACourt_straightAndCross_neverMix() {
    PlannedBlock block = firstGames(PLAN);
    List<PlannedGame> games = new ArrayList<>(block.games());
    PlannedGame first = games.get(0);
    boolean straight = Line.of(first.place().lane()) == Line.STRAIGHT;
    Lane other = straight ? Lane.CROSS_EVEN : Lane.STRAIGHT_RIGHT;
    games.set(
        0,
        new PlannedGame(
            first.id(), 1, new CourtLane(1, other), first.a(), first.b(), first.headStart()));
    assertThat(broken(withGames(PLAN, games))).contains(PlanRule.LANES_OF_A_COURT);
  }

  @Test
  void lanesOfACourt_foursAndLanes_shareASessionButNoCourt() {
    List<Drill> drills = new ArrayList<>(ToyDrills.all());
    drills.add(ToyDrills.doubles("doubles", Skill.DINK));
    drills.add(ToyDrills.twoAgainstOne("two-on-one"));
    Requests requests =
        pinned("doubles", Line.STRAIGHT, 2)
            .with(new Slot.Pinned(new DrillKey("two-on-one"), Line.STRAIGHT, 1));
    PlanProblem problem =
        ToyDrills.problem(
            ToyDrills.players(9), drills, SessionWish.of(100, 2).withRequests(requests));
    SessionPlan plan = planned(problem);
    assertThat(drills(plan)).contains("doubles", "two-on-one");
    for (PlannedBlock block : plan.blocks()) {
      if (block.drill().value().equals("doubles")) {
        assertThat(block.games()).allMatch(PlannedGame::takesWholeCourt);
        assertThat(block.games()).filteredOn(game -> game.turn() == 1).hasSize(2);
      }
    }
  }

  @Test
  void blockEnds_byTheClockOrWithTheLastLane_asAskedFor() {
    PlanProblem horn = with(Requests.NONE.withEnds(Requests.Ends.BY_CLOCK));
    assertThat(planned(horn).blocks())
        .filteredOn(block -> !block.games().isEmpty())
        .allMatch(block -> block.end() == PlannedBlock.End.BY_CLOCK);
    assertThat(broken(horn, PLAN)).contains(PlanRule.BLOCK_ENDS);
    PlanProblem wide =
        ToyDrills.problem(
            ToyDrills.players(8),
            ToyDrills.all(),
            SessionWish.of(90, 2).withRequests(Requests.NONE.withEnds(Requests.Ends.LAST_LANE)));
    assertThat(planned(wide).blocks())
        .filteredOn(block -> !block.games().isEmpty())
        .allMatch(block -> block.end() == PlannedBlock.End.LAST_LANE);
  }

  @Test
  void equipment_notAtHand_keepsADrillOut() {
    List<Drill> drills =
        ToyDrills.all().stream()
            .map(
                each ->
                    each.key().value().equals("dinks") ? ToyDrills.needing(each, "cones") : each)
            .toList();
    PlanProblem bare =
        ToyDrills.problem(
            FOUR, drills, WISH.withRequests(Requests.NONE.withEquipment(Set.of("balls"))));
    assertThat(drills(planned(bare))).doesNotContain("dinks");
    PlanProblem asked = bare.withWish(WISH.withRequests(pinned("dinks", Line.CROSS, 1)));
    assertThat(broken(bare, planned(asked))).contains(PlanRule.EQUIPMENT);
  }

  @Test
  void pinned_isInThePlanWithItsRounds() {
    PlanProblem problem = with(pinned("drives", Line.CROSS, 2));
    SessionPlan plan = planned(problem);
    assertThat(drills(plan)).contains("drives");
    SessionPlan less =
        plan.withBlocks(
            plan.blocks().stream().filter(b -> !b.drill().value().equals("drives")).toList());
    assertThat(broken(problem, less)).contains(PlanRule.PINNED);
  }

  @Test
  void forbidden_isNotInThePlan() {
    String favourite = firstGames(PLAN).drill().value();
    PlanProblem problem = with(Requests.NONE.without(new DrillKey(favourite)));
    assertThat(drills(planned(problem))).doesNotContain(favourite);
    assertThat(broken(problem, PLAN)).contains(PlanRule.FORBIDDEN);
  }

  @Test
  void slots_ofATemplate_areFilledByTheDaysNeeds() {
    Requests hands = Requests.NONE.with(new Slot.AnyOf(SkillGroup.HANDS));
    PlanProblem problem = with(hands.with(new Slot.AnyOf(SkillGroup.HANDS)));
    SessionPlan plan = planned(problem);
    List<String> trainHands = List.of("hands", "speed-ups", "resets", "drops", "drives");
    assertThat(drills(plan)).filteredOn(trainHands::contains).hasSizeGreaterThanOrEqualTo(2);
    SessionPlan none =
        plan.withBlocks(
            plan.blocks().stream().filter(b -> !trainHands.contains(b.drill().value())).toList());
    assertThat(broken(problem, none)).contains(PlanRule.SLOTS);
  }

  @Test
  void yardsticks_standInThePlanWhenTheyAreDue() {
    PlanProblem due =
        with(Requests.NONE.withYardsticks(new YardstickWish.Every(4, 3)))
            .withYardsticks(List.of(ToyDrills.yardstick("drops-test", Skill.DROP)));
    SessionPlan plan = planned(due);
    assertThat(plan.blocks()).filteredOn(each -> each.kind() == Kind.YARDSTICK).hasSize(1);
    assertThat(plan.blocks().get(3).kind()).isEqualTo(Kind.YARDSTICK);
    assertThat(broken(due, without(plan, Kind.YARDSTICK))).contains(PlanRule.YARDSTICKS);
    PlanProblem notYet =
        due.withWish(
            WISH.withRequests(Requests.NONE.withYardsticks(new YardstickWish.Every(4, 2))));
    assertThat(planned(notYet).blocks()).noneMatch(each -> each.kind() == Kind.YARDSTICK);
  }

  @Test
  void everyoneOnce_somebodyPlacedTwice_isTold() {
    PlannedBlock block = firstGames(PLAN);
    List<PlannedGame> games = new ArrayList<>(block.games());
    PlannedGame first = games.get(0);
    PlayerId twice = games.get(1).a().players().get(0);
    games.set(
        0,
        new PlannedGame(
            first.id(),
            first.turn(),
            first.place(),
            new Seat(first.a().role(), List.of(twice)),
            first.b(),
            first.headStart()));
    assertThat(broken(withGames(PLAN, games))).contains(PlanRule.EVERYONE_ONCE);
  }

  @Test
  void sitOuts_thatFallOnOne_areTold() {
    List<Attendee> five = ToyDrills.players(5);
    PlanProblem problem = ToyDrills.problem(five, ToyDrills.all(), WISH);
    SessionPlan plan = planned(problem);
    PlannedBlock block = firstGames(plan);
    PlanEditor editor = PlanEditor.of(problem);
    int place = plan.blocks().indexOf(block);
    List<PlannedBlock> blocks = new ArrayList<>(plan.blocks());
    for (int copy = 0; copy < 3; copy++) {
      blocks.add(place, block);
    }
    assertThat(broken(problem, plan.withBlocks(blocks))).contains(PlanRule.SIT_OUTS);
    assertThat(editor.remove(plan, block.id(), WarmUpRemoval.NOT_CONFIRMED))
        .isInstanceOf(PlanEdit.Changed.class);
  }
}
