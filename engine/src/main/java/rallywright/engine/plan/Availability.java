package rallywright.engine.plan;

import java.util.List;
import java.util.Optional;
import rallywright.engine.drill.Drill;

/** Whether a drill can be planned at all for those present, and if not, which rule stands by. */
final class Availability {

  private final PlanContext context;

  Availability(PlanContext context) {
    this.context = context;
  }

  /** Why a drill cannot be planned; empty if it can. */
  Optional<PlanCheck.BrokenRule> obstacle(DrillLine line) {
    return forbidden(line.drill())
        .or(() -> equipmentMissing(line.drill()))
        .or(() -> nobodyMay(line));
  }

  private Optional<PlanCheck.BrokenRule> forbidden(Drill drill) {
    return context.wish().requests().forbidden().contains(drill.key())
        ? Optional.of(
            new PlanCheck.BrokenRule(
                PlanRule.FORBIDDEN,
                "%s is ruled out by the coach. Maybe allow it again.".formatted(drill.name())))
        : Optional.empty();
  }

  private Optional<PlanCheck.BrokenRule> equipmentMissing(Drill drill) {
    return context
        .wish()
        .requests()
        .equipment()
        .flatMap(
            atHand ->
                drill.advice().equipment().stream()
                    .filter(each -> !atHand.contains(each))
                    .findFirst())
        .map(
            missing ->
                new PlanCheck.BrokenRule(
                    PlanRule.EQUIPMENT,
                    "%s needs %s, which is not at hand. Maybe bring it along."
                        .formatted(drill.name(), missing)));
  }

  private Optional<PlanCheck.BrokenRule> nobodyMay(DrillLine line) {
    int eligible = context.eligible(line.drill()).size();
    int present = context.attendees().size();
    if (context.shape(line).groups() > 0 && somebodyFits(line)) {
      return Optional.empty();
    }
    if (eligible < present && present >= line.players()) {
      return Optional.of(
          new PlanCheck.BrokenRule(
              PlanRule.LIMITS,
              "%s asks for something to be spared; only %d of %d may play it."
                      .formatted(line.drill().name(), eligible, present)
                  + " Maybe choose another drill."));
    }
    return Optional.of(
        new PlanCheck.BrokenRule(
            PlanRule.EVERYONE_ONCE,
            "%s needs %d players, %d %s there. Maybe choose a drill for fewer."
                .formatted(
                    line.drill().name(), line.players(), present, present == 1 ? "is" : "are")));
  }

  /** Whether two at least may meet in some order of roles; more than two must take both roles. */
  private boolean somebodyFits(DrillLine line) {
    List<RoleAccess> all =
        context.eligible(line.drill()).stream()
            .map(place -> context.access(context.attendees().get(place), line.drill()))
            .toList();
    if (line.players() > 2) {
      return all.stream().filter(RoleAccess.BOTH::equals).count() >= line.players();
    }
    for (int one = 0; one < all.size(); one++) {
      for (int other = one + 1; other < all.size(); other++) {
        if (all.get(one).fits(all.get(other))) {
          return true;
        }
      }
    }
    return false;
  }
}
