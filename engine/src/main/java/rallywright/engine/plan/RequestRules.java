package rallywright.engine.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.plan.PlanCheck.BrokenRule;

/** The rules of a plan that come from what the coach asked for, each answered in a sentence. */
final class RequestRules {

  private final SessionPlan plan;
  private final PlanContext context;
  private final Requests requests;

  RequestRules(SessionPlan plan, PlanContext context) {
    this.plan = plan;
    this.context = context;
    this.requests = context.wish().requests();
  }

  List<Optional<BrokenRule>> all() {
    return List.of(
        forbiddenIsLeftOut(),
        equipmentIsAtHand(),
        pinnedIsPlanned(),
        slotsAreFilled(),
        yardsticksAreDue());
  }

  private static Optional<BrokenRule> broken(PlanRule rule, String sentence) {
    return Optional.of(new BrokenRule(rule, sentence));
  }

  /** The drills of the plan that train something, each once. */
  private List<Drill> drills() {
    return plan.blocks().stream()
        .filter(block -> block.kind() == PlannedBlock.Kind.TOGETHER || !block.games().isEmpty())
        .map(block -> context.drill(block.drill()))
        .distinct()
        .toList();
  }

  /** "What the coach has ruled out is not in the plan." */
  Optional<BrokenRule> forbiddenIsLeftOut() {
    return drills().stream()
        .filter(drill -> requests.forbidden().contains(drill.key()))
        .findFirst()
        .flatMap(
            drill ->
                broken(
                    PlanRule.FORBIDDEN,
                    "%s is ruled out, but stands in the plan. Maybe take it out."
                        .formatted(drill.name())));
  }

  /** "We play what we have the things for." */
  Optional<BrokenRule> equipmentIsAtHand() {
    Set<String> atHand = requests.equipment().orElse(Set.of());
    for (Drill drill : requests.equipment().isPresent() ? drills() : List.<Drill>of()) {
      for (String needed : drill.advice().equipment()) {
        if (!atHand.contains(needed)) {
          return broken(
              PlanRule.EQUIPMENT,
              "%s needs %s, which is not at hand. Maybe choose another drill."
                  .formatted(drill.name(), needed));
        }
      }
    }
    return Optional.empty();
  }

  /** "What the coach has pinned is in the plan." */
  Optional<BrokenRule> pinnedIsPlanned() {
    for (Slot slot : requests.slots()) {
      if (slot instanceof Slot.Pinned pin && rounds(pin) < pin.rounds()) {
        String name =
            context.findDrill(pin.drill()).map(Drill::name).orElse(pin.drill().toString());
        return broken(
            PlanRule.PINNED,
            "%s is asked for with %d rounds, %d are planned. Maybe add a round."
                .formatted(name, pin.rounds(), rounds(pin)));
      }
    }
    return Optional.empty();
  }

  private int rounds(Slot.Pinned pin) {
    int rounds = 0;
    for (PlannedBlock block : plan.blocks()) {
      if (block.drill().equals(pin.drill()) && matches(block, pin)) {
        boolean together = block.kind() == PlannedBlock.Kind.TOGETHER;
        rounds += together ? pin.rounds() : context.stints(block).size();
      }
    }
    return rounds;
  }

  private boolean matches(PlannedBlock block, Slot.Pinned pin) {
    DrillLine line = context.lineOf(block);
    return block.games().isEmpty() || line.players() > 2 || line.line() == pin.line();
  }

  /** "Every slot for a group of skills has a drill." */
  Optional<BrokenRule> slotsAreFilled() {
    for (SkillGroup group : SkillGroup.values()) {
      long wanted = requests.slots().stream().filter(each -> isFor(each, group)).count();
      long found =
          drills().stream().filter(drill -> SearchModel.groups(drill).contains(group)).count();
      if (found < wanted) {
        return broken(
            PlanRule.SLOTS,
            "%d drills for \"%s\" are asked for, %d are planned. Maybe add one."
                .formatted(wanted, group.words(), found));
      }
    }
    return Optional.empty();
  }

  private static boolean isFor(Slot slot, SkillGroup group) {
    return slot instanceof Slot.AnyOf any && any.group() == group;
  }

  /** "A test stands in the plan when it is due." */
  Optional<BrokenRule> yardsticksAreDue() {
    Set<DrillKey> planned = new HashSet<>();
    plan.blocks().stream()
        .filter(block -> block.kind() == PlannedBlock.Kind.YARDSTICK)
        .forEach(block -> planned.add(block.drill()));
    return YardstickTimes.of(context.problem()).stream()
        .filter(each -> !planned.contains(each.yardstick().key()))
        .findFirst()
        .flatMap(
            each ->
                broken(
                    PlanRule.YARDSTICKS,
                    "The test \"%s\" is due, but not planned. Maybe plan the session anew."
                        .formatted(each.yardstick().name())));
  }
}
