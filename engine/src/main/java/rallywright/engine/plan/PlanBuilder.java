package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rallywright.engine.plan.BlockBuilder.Request;
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
    boolean[] rests = new boolean[walk.stints().length];
    for (int i = 0; i < rests.length; i++) {
      rests[i] = walk.restBefore(i);
    }
    List<PlannedBlock> blocks = blocks(walk, rests);
    SessionWish wish = context.wish();
    return new SessionPlan(
        wish.minutes(),
        wish.courts(),
        context.attendees().stream().map(Attendee::id).toList(),
        blocks);
  }

  private List<PlannedBlock> opening(BlockNames names) {
    List<PlannedBlock> blocks = new ArrayList<>();
    for (WarmUpTimes.WarmUp warmUp : WarmUpTimes.of(context.problem())) {
      BlockId id = names.next(warmUp.drill().key().value());
      blocks.add(builder.warmUp(id, warmUp.drill(), warmUp.minutes()));
    }
    for (YardstickTimes.Planned test : YardstickTimes.of(context.problem())) {
      blocks.add(builder.yardstick(names.next(test.yardstick().key().value()), test));
    }
    return blocks;
  }

  /**
   * All blocks. Where games that are longer than usual ask for one more rest and somebody leaves
   * early, everything behind it is made anew: it begins later.
   */
  private List<PlannedBlock> blocks(Walk walk, boolean[] rests) {
    BlockNames names = new BlockNames(before);
    List<PlannedBlock> blocks = opening(names);
    Rotation rotation = new Rotation(context);
    double hard = 0;
    for (int i = 0; i < rests.length; i++) {
      if (walk.stints()[i] == 0) {
        continue;
      }
      Option option = walk.model().options().get(i);
      BlockId id = names.next(BlockNames.stem(option.line()));
      double pause = rests[i] ? BlockBuilder.restMinutes(context.wish()) : 0;
      double start = BlockClock.startMinute(blocks, blocks.size()) + pause;
      Request request = new Request(option.line(), walk.stints()[i], start);
      PlannedBlock block = builder.games(id, request, rotation);
      double minutes = option.isHard() ? block.time().mean() : 0;
      boolean oneMore = !rests[i] && hard > 0 && hard + minutes > mostHard();
      if (oneMore && !context.presence().isThroughout()) {
        rests[i] = true;
        return blocks(walk, rests);
      }
      if (rests[i] || oneMore) {
        blocks.add(builder.rest(names.next(BlockBuilder.WATER.value())));
        hard = 0;
      }
      if (block.kind() == PlannedBlock.Kind.TOGETHER || !block.games().isEmpty()) {
        blocks.add(block);
        hard = option.isHard() ? hard + minutes : 0;
      }
    }
    return blocks;
  }

  private double mostHard() {
    return context.wish().maxHardMinutes() + PlanRules.HARD_TOLERANCE_MINUTES;
  }
}
