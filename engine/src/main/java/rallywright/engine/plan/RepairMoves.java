package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Progression;
import rallywright.engine.plan.BlockBuilder.Request;
import rallywright.engine.plan.PlannedBlock.Kind;
import rallywright.engine.plan.SearchModel.Option;

/** All single changes that may mend a rule, each with its words. */
final class RepairMoves {

  private static final Set<PlanRule> ABOUT_PEOPLE =
      EnumSet.of(
          PlanRule.EVERYONE_ONCE,
          PlanRule.PRESENCE,
          PlanRule.LANES_OF_A_COURT,
          PlanRule.BOTH_ROLES,
          PlanRule.LIMITS,
          PlanRule.SIT_OUTS,
          PlanRule.BLOCK_ENDS);

  private static final Set<PlanRule> MENDED_BY_REST =
      EnumSet.of(PlanRule.HARD_MINUTES, PlanRule.WATER_BREAK, PlanRule.RESTS);

  private static final Set<PlanRule> MENDED_BY_DRILL =
      EnumSet.of(PlanRule.COVERAGE, PlanRule.SLOTS, PlanRule.PINNED);

  private static final Set<PlanRule> MENDED_BY_LESS =
      EnumSet.of(
          PlanRule.BOOKED_TIME,
          PlanRule.HARD_MINUTES,
          PlanRule.DIRECTIONS,
          PlanRule.FORBIDDEN,
          PlanRule.EQUIPMENT,
          PlanRule.LIMITS,
          PlanRule.PRESENCE,
          PlanRule.SIT_OUTS);

  private final PlanContext context;
  private final SearchModel model;
  private final BlockBuilder builder;

  /**
   * One change.
   *
   * @param plan the plan after it
   * @param words what was done
   */
  record Move(SessionPlan plan, String words) {}

  RepairMoves(PlanContext context, SearchModel model) {
    this.context = context;
    this.model = model;
    this.builder = new BlockBuilder(context);
  }

  List<Move> of(SessionPlan plan, PlanCheck check) {
    Set<PlanRule> broken = EnumSet.noneOf(PlanRule.class);
    check.brokenRules().forEach(each -> broken.add(each.rule()));
    List<Move> moves = new ArrayList<>();
    if (broken.contains(PlanRule.WARM_UP_FIRST)) {
      moves.add(warmUpsFirst(plan));
    }
    if (broken.contains(PlanRule.FROM_THE_LINE_BACK)) {
      moves.addAll(inOrder(plan));
    }
    if (broken.stream().anyMatch(MENDED_BY_REST::contains)) {
      moves.addAll(rests(plan));
    }
    if (broken.stream().anyMatch(MENDED_BY_LESS::contains)) {
      moves.addAll(less(plan, 0));
    }
    if (broken.stream().anyMatch(MENDED_BY_DRILL::contains)) {
      moves.addAll(drills(plan));
    }
    if (broken.stream().anyMatch(ABOUT_PEOPLE::contains)) {
      moves.addAll(anew(plan));
    }
    if (broken.contains(PlanRule.PRESENCE)) {
      moves.addAll(withThoseWhoAreThere(plan));
    }
    if (broken.contains(PlanRule.PINNED) || broken.contains(PlanRule.DIRECTIONS)) {
      moves.addAll(more(plan));
    }
    if (broken.contains(PlanRule.YARDSTICKS)) {
      moves.addAll(tests(plan));
    }
    return moves;
  }

  /** A round or a whole block less, begun blocks and warm-ups aside. */
  List<Move> less(SessionPlan plan, int begun) {
    List<Move> moves = new ArrayList<>();
    for (int place = begun; place < plan.blocks().size(); place++) {
      PlannedBlock block = plan.blocks().get(place);
      if (block.kind() == Kind.WARM_UP) {
        continue;
      }
      moves.add(new Move(without(plan, place), "Left out: %s.".formatted(name(block))));
      if (context.stints(block).size() > 1) {
        PlannedBlock fewer = builder.withoutLastStint(block);
        moves.add(
            new Move(put(plan, place, fewer), "One round less of %s.".formatted(name(block))));
      }
    }
    return moves;
  }

  private List<Move> more(SessionPlan plan) {
    List<Move> moves = new ArrayList<>();
    for (int place = 0; place < plan.blocks().size(); place++) {
      PlannedBlock block = plan.blocks().get(place);
      if (!block.games().isEmpty()) {
        Rotation rotation = rotation(plan, place + 1);
        int at = place;
        builder
            .withStint(block, context.lineOf(block), start(plan, place), rotation)
            .map(longer -> put(plan, at, longer))
            .ifPresent(next -> moves.add(new Move(next, "One round more of " + name(block) + ".")));
      }
    }
    return moves;
  }

  private List<Move> anew(SessionPlan plan) {
    List<Move> moves = new ArrayList<>();
    for (int place = 0; place < plan.blocks().size(); place++) {
      PlannedBlock block = plan.blocks().get(place);
      int at = place;
      fresh(plan, place)
          .map(next -> put(plan, at, next))
          .map(next -> new Move(next, "Who plays whom anew: " + name(block) + "."))
          .ifPresent(moves::add);
    }
    return moves;
  }

  /** A block of games with who plays whom anew; empty where there are none or too few are there. */
  private Optional<PlannedBlock> fresh(SessionPlan plan, int place) {
    PlannedBlock block = plan.blocks().get(place);
    if (block.games().isEmpty()) {
      return Optional.empty();
    }
    int stints = Math.max(1, context.stints(block).size());
    Rotation rotation = rotation(without(plan, place), place);
    Request request = new Request(context.lineOf(block), stints, start(plan, place));
    return Optional.of(builder.games(block.id(), request, rotation))
        .filter(next -> !PlanEditor.isEmpty(next));
  }

  /** All blocks at once in which somebody is placed who is not there. */
  private List<Move> withThoseWhoAreThere(SessionPlan plan) {
    Set<BlockId> wrong = new PeopleRules(plan, context).blocksWithSomebodyAbsent();
    SessionPlan next = plan;
    for (int place = 0; place < plan.blocks().size(); place++) {
      int at = place;
      SessionPlan now = next;
      if (wrong.contains(plan.blocks().get(place).id())) {
        next = fresh(now, place).map(block -> put(now, at, block)).orElse(now);
      }
    }
    return List.of(new Move(next, "Who plays whom anew, with those who are there by then."));
  }

  private Move warmUpsFirst(SessionPlan plan) {
    List<PlannedBlock> blocks = new ArrayList<>();
    SessionPlan others =
        plan.withBlocks(
            plan.blocks().stream().filter(block -> block.kind() != Kind.WARM_UP).toList());
    for (WarmUpTimes.WarmUp warmUp : WarmUpTimes.of(context.problem())) {
      Optional<PlannedBlock> kept =
          plan.blocks().stream()
              .filter(block -> block.drill().equals(warmUp.drill().key()))
              .findFirst();
      blocks.add(
          kept.orElseGet(
              () ->
                  builder.warmUp(
                      PlanEditor.freshName(plan, warmUp.drill().key().value()),
                      warmUp.drill(),
                      warmUp.minutes())));
    }
    blocks.addAll(others.blocks());
    return new Move(plan.withBlocks(blocks), "Put the warm-ups first.");
  }

  private List<Move> inOrder(SessionPlan plan) {
    List<Move> moves = new ArrayList<>();
    for (int place = 0; place < plan.blocks().size(); place++) {
      PlannedBlock block = plan.blocks().get(place);
      if (!block.games().isEmpty()) {
        SessionPlan others = without(plan, place);
        int target = position(others, context.drill(block.drill()));
        moves.add(
            new Move(insert(others, target, block), "Moved to its place: " + name(block) + "."));
      }
    }
    return moves;
  }

  /** After the last block that stands nowhere behind the drill's own stage. */
  private int position(SessionPlan plan, Drill drill) {
    int position = 0;
    for (int place = 0; place < plan.blocks().size(); place++) {
      PlannedBlock block = plan.blocks().get(place);
      Progression at =
          context.findDrill(block.drill()).map(Drill::progression).orElse(Progression.WARM_UP);
      boolean counts = block.kind() != Kind.BREAK;
      if (counts && at.compareTo(drill.progression()) <= 0) {
        position = place + 1;
      }
    }
    return position;
  }

  private List<Move> rests(SessionPlan plan) {
    List<Move> moves = new ArrayList<>();
    for (int place = 1; place < plan.blocks().size(); place++) {
      PlannedBlock rest = builder.rest(PlanEditor.freshName(plan, BlockBuilder.WATER.value()));
      moves.add(
          new Move(
              insert(plan, place, rest),
              "A rest before %s.".formatted(name(plan.blocks().get(place)))));
    }
    return moves;
  }

  private List<Move> drills(SessionPlan plan) {
    List<Move> moves = new ArrayList<>();
    for (Option option : model.options()) {
      int place = position(plan, option.line().drill());
      BlockId id = PlanEditor.freshName(plan, SessionPlanner.BlockNames.stem(option.line()));
      Request request = new Request(option.line(), 1, start(plan, place));
      PlannedBlock block = builder.games(id, request, rotation(plan, place));
      if (!PlanEditor.isEmpty(block)) {
        moves.add(new Move(insert(plan, place, block), "Added: " + option.line().words() + "."));
      }
    }
    return moves;
  }

  private List<Move> tests(SessionPlan plan) {
    long warmUps = plan.blocks().stream().filter(each -> each.kind() == Kind.WARM_UP).count();
    List<Move> moves = new ArrayList<>();
    for (YardstickTimes.Planned test : YardstickTimes.of(context.problem())) {
      BlockId id = PlanEditor.freshName(plan, test.yardstick().key().value());
      moves.add(
          new Move(
              insert(plan, (int) warmUps, builder.yardstick(id, test)),
              "Added the test: " + test.yardstick().name() + "."));
    }
    return moves;
  }

  private static double start(SessionPlan plan, int position) {
    return BlockClock.startMinute(plan.blocks(), position);
  }

  private Rotation rotation(SessionPlan plan, int position) {
    return PlanEditor.rotation(context, plan, position);
  }

  private String name(PlannedBlock block) {
    return context
        .findDrill(block.drill())
        .map(Drill::name)
        .orElse(block.kind() == Kind.BREAK ? "the rest" : block.drill().value());
  }

  private static SessionPlan without(SessionPlan plan, int place) {
    List<PlannedBlock> blocks = new ArrayList<>(plan.blocks());
    blocks.remove(place);
    return plan.withBlocks(blocks);
  }

  private static SessionPlan put(SessionPlan plan, int place, PlannedBlock block) {
    List<PlannedBlock> blocks = new ArrayList<>(plan.blocks());
    blocks.set(place, block);
    return plan.withBlocks(blocks);
  }

  private static SessionPlan insert(SessionPlan plan, int place, PlannedBlock block) {
    List<PlannedBlock> blocks = new ArrayList<>(plan.blocks());
    blocks.add(place, block);
    return plan.withBlocks(blocks);
  }
}
