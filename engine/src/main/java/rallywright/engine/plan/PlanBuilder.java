package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rallywright.engine.plan.SearchModel.Option;
import rallywright.engine.plan.SessionPlanner.BlockNames;

/** Makes a plan of a choice: warm-ups, tests, then games with who meets whom, and rests. */
final class PlanBuilder {

  private final PlanContext context;
  private final Optional<SessionPlan> before;
  private final BlockBuilder builder;

  PlanBuilder(PlanContext context, Optional<SessionPlan> before) {
    this.context = context;
    this.before = before;
    this.builder = new BlockBuilder(context);
  }

  SessionPlan build(Walk walk) {
    BlockNames names = new BlockNames(before);
    List<PlannedBlock> blocks = new ArrayList<>();
    for (WarmUpTimes.WarmUp warmUp : WarmUpTimes.of(context.problem())) {
      BlockId id = names.next(warmUp.drill().key().value());
      blocks.add(builder.warmUp(id, warmUp.drill(), warmUp.minutes()));
    }
    for (YardstickTimes.Planned test : YardstickTimes.of(context.problem())) {
      blocks.add(builder.yardstick(names.next(test.yardstick().key().value()), test));
    }
    Rotation rotation = new Rotation(context);
    double hard = 0;
    for (int i = 0; i < walk.stints().length; i++) {
      if (walk.stints()[i] > 0) {
        Option option = walk.model().options().get(i);
        BlockId id = names.next(BlockNames.stem(option.line()));
        PlannedBlock block = builder.games(id, option.line(), walk.stints()[i], rotation);
        double minutes = option.isHard() ? block.time().mean() : 0;
        if (walk.restBefore(i) || (hard > 0 && hard + minutes > mostHard())) {
          blocks.add(builder.rest(names.next(BlockBuilder.WATER.value())));
          hard = 0;
        }
        blocks.add(block);
        hard = option.isHard() ? hard + minutes : 0;
      }
    }
    SessionWish wish = context.wish();
    return new SessionPlan(
        wish.minutes(),
        wish.courts(),
        context.attendees().stream().map(Attendee::id).toList(),
        blocks);
  }

  private double mostHard() {
    return context.wish().maxHardMinutes() + PlanRules.HARD_TOLERANCE_MINUTES;
  }
}
