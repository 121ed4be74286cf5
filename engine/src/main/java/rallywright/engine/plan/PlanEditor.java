package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.BlockBuilder.Request;
import rallywright.engine.plan.PlannedBlock.Kind;

/**
 * Changes a plan by hand. Every change gives a new plan with its check; blocks that are not touched
 * keep their ids, games and times.
 */
public final class PlanEditor {

  private final PlanContext context;
  private final BlockBuilder builder;
  private final PlanReading reading;
  private final SearchModel model;

  /** Whether the coach has said that a warm-up may go. */
  public enum WarmUpRemoval {
    /** A warm-up stays. */
    NOT_CONFIRMED,
    /** The coach takes it out by an explicit choice. */
    CONFIRMED
  }

  private PlanEditor(PlanProblem problem) {
    context = new PlanContext(problem);
    builder = new BlockBuilder(context);
    model = new SearchModel(context, 60 * SessionPlanner.fixedMinutes(problem));
    reading = new PlanReading(context, model, new SearchRules(model));
  }

  /**
   * An editor for plans of a problem.
   *
   * @param problem everything the plan was made from; its wish must be one that can be met
   * @return the editor
   * @throws IllegalArgumentException if the wish cannot be met
   */
  public static PlanEditor of(PlanProblem problem) {
    List<String> sentences = WishCheck.problemsOfKept(problem);
    if (!sentences.isEmpty()) {
      throw new IllegalArgumentException(String.join(" ", sentences));
    }
    return new PlanEditor(problem);
  }

  /**
   * What holds of a plan.
   *
   * @param plan a plan of this editor's problem
   * @return its clock, coverage, benefit and broken rules
   */
  public PlanCheck check(SessionPlan plan) {
    return reading.check(plan);
  }

  /**
   * Who sits a block out because a limit keeps them from every role of its drill.
   *
   * @param block a block with games
   * @return those players, in the order of the attendees; for the coach's eyes only
   */
  public List<PlayerId> spared(PlannedBlock block) {
    Optional<Drill> drill = block.games().isEmpty() ? Optional.empty() : findDrill(block);
    return drill.stream()
        .flatMap(
            each ->
                context.attendees().stream()
                    .filter(player -> context.access(player, each) == RoleAccess.NEITHER))
        .map(Attendee::id)
        .toList();
  }

  private Optional<Drill> findDrill(PlannedBlock block) {
    return context.findDrill(block.drill());
  }

  /**
   * Puts a drill in.
   *
   * @param plan the plan
   * @param drill the drill
   * @param line straight or cross-court
   * @param position before which block, 0 for the start, the number of blocks for the end
   * @return the changed plan, or why not
   */
  public PlanEdit add(SessionPlan plan, DrillKey drill, Line line, int position) {
    Optional<String> refusal = refusal(drill, line);
    if (refusal.isPresent()) {
      return new PlanEdit.Refused(refusal.get());
    }
    if (position < 0 || position > plan.blocks().size()) {
      return outside(position, plan.blocks().size());
    }
    DrillLine chosen = find(context.drill(drill), line).orElseThrow();
    BlockId id = freshName(plan, chosen);
    List<PlannedBlock> blocks = new ArrayList<>(plan.blocks());
    double start = BlockClock.startMinute(plan.blocks(), position);
    PlannedBlock block = builder.games(id, new Request(chosen, 1, start), rotation(plan, position));
    if (isEmpty(block)) {
      return tooFew();
    }
    blocks.add(position, block);
    return changed(plan, blocks);
  }

  /**
   * Takes a block out.
   *
   * @param plan the plan
   * @param block which one
   * @param removal whether a warm-up may go
   * @return the changed plan, or why not
   */
  public PlanEdit remove(SessionPlan plan, BlockId block, WarmUpRemoval removal) {
    Optional<PlannedBlock> found = plan.block(block);
    if (found.isEmpty()) {
      return unknown(block);
    }
    if (found.get().kind() == Kind.WARM_UP && removal == WarmUpRemoval.NOT_CONFIRMED) {
      return new PlanEdit.Refused(
          "A warm-up goes only by an explicit choice. Maybe confirm that everybody is warm.");
    }
    return changed(plan, plan.blocks().stream().filter(each -> !each.id().equals(block)).toList());
  }

  /**
   * Moves a block.
   *
   * @param plan the plan
   * @param block which one
   * @param position its new place, from 0
   * @return the changed plan, or why not
   */
  public PlanEdit move(SessionPlan plan, BlockId block, int position) {
    Optional<PlannedBlock> found = plan.block(block);
    if (found.isEmpty()) {
      return unknown(block);
    }
    if (position < 0 || position >= plan.blocks().size()) {
      return outside(position, plan.blocks().size() - 1);
    }
    List<PlannedBlock> blocks = new ArrayList<>(plan.blocks());
    blocks.remove(found.get());
    blocks.add(position, found.get());
    return changed(plan, blocks);
  }

  /**
   * Adds one stint to a block: one more game for everybody, two where roles are swapped.
   *
   * @param plan the plan
   * @param block which one
   * @return the changed plan, or why not
   */
  public PlanEdit moreGames(SessionPlan plan, BlockId block) {
    return withGames(
        plan,
        block,
        old -> {
          int place = plan.blocks().indexOf(old);
          double start = BlockClock.startMinute(plan.blocks(), place);
          DrillLine line = context.lineOf(old);
          return builder.withStint(old, line, start, rotation(plan, place + 1));
        });
  }

  /**
   * Takes the last stint from a block.
   *
   * @param plan the plan
   * @param block which one
   * @return the changed plan, or why not
   */
  public PlanEdit fewerGames(SessionPlan plan, BlockId block) {
    Optional<PlannedBlock> found = plan.block(block);
    if (found.isPresent()
        && !found.get().games().isEmpty()
        && context.stints(found.get()).size() == 1) {
      return new PlanEdit.Refused(
          "The block has only one round of games left. Maybe take the whole block out.");
    }
    return withGames(plan, block, old -> Optional.of(builder.withoutLastStint(old)));
  }

  /**
   * Puts another drill in the place of one, with as many stints.
   *
   * @param plan the plan
   * @param block which block
   * @param drill the new drill
   * @param line straight or cross-court
   * @return the changed plan, or why not
   */
  public PlanEdit replace(SessionPlan plan, BlockId block, DrillKey drill, Line line) {
    Optional<String> refusal = refusal(drill, line);
    if (refusal.isPresent()) {
      return new PlanEdit.Refused(refusal.get());
    }
    DrillLine chosen = find(context.drill(drill), line).orElseThrow();
    return withGames(
        plan,
        block,
        old -> {
          List<PlannedBlock> others = new ArrayList<>(plan.blocks());
          int position = others.indexOf(old);
          others.remove(old);
          int stints = Math.max(1, context.stints(old).size());
          double start = BlockClock.startMinute(others, position);
          Request request = new Request(chosen, stints, start);
          Rotation rotation = rotation(plan.withBlocks(others), position);
          PlannedBlock next = builder.games(freshName(plan, chosen), request, rotation);
          return isEmpty(next) ? Optional.empty() : Optional.of(next);
        });
  }

  /**
   * Lets two people change places in one turn of a block; one of them may be sitting out.
   *
   * @param plan the plan
   * @param swap who, and in which turn
   * @return the changed plan, or why not
   */
  public PlanEdit swapSeats(SessionPlan plan, SeatSwap swap) {
    Optional<PlannedBlock> found = plan.block(swap.block());
    if (found.isPresent() && !found.get().games().isEmpty()) {
      Optional<String> refusal = new Seating(context, found.get()).refusal(swap, plan);
      if (refusal.isPresent()) {
        return new PlanEdit.Refused(refusal.get());
      }
    }
    return withGames(
        plan,
        swap.block(),
        old -> Optional.of(builder.timed(new Seating(context, old).swapped(swap))));
  }

  private PlanEdit withGames(
      SessionPlan plan, BlockId block, Function<PlannedBlock, Optional<PlannedBlock>> change) {
    Optional<PlannedBlock> found = plan.block(block);
    if (found.isEmpty()) {
      return unknown(block);
    }
    if (found.get().games().isEmpty()) {
      return new PlanEdit.Refused(
          "This block has no games: it is a warm-up or a break. Maybe a drill was meant.");
    }
    Optional<PlannedBlock> next = change.apply(found.get());
    if (next.isEmpty()) {
      return tooFew();
    }
    List<PlannedBlock> blocks = new ArrayList<>(plan.blocks());
    blocks.replaceAll(each -> each.id().equals(block) ? next.get() : each);
    return changed(plan, blocks);
  }

  private Optional<String> refusal(DrillKey key, Line line) {
    Optional<Drill> drill = context.findDrill(key);
    if (drill.isEmpty()) {
      return Optional.of(
          "The drill \"%s\" is not in the catalogue. Maybe it was spelled differently."
              .formatted(key));
    }
    Optional<DrillLine> wanted = find(drill.get(), line);
    if (wanted.isEmpty()) {
      return Optional.of(
          "%s is not played %s. Maybe choose another drill or line."
              .formatted(drill.get().name(), line.words()));
    }
    return new Availability(context).obstacle(wanted.get()).map(PlanCheck.BrokenRule::sentence);
  }

  /** A drill along a line; what takes the whole court or is not scored has only one. */
  private static Optional<DrillLine> find(Drill drill, Line line) {
    return DrillLine.allOf(List.of(drill)).stream()
        .filter(each -> each.line() == line || each.players() > 2 || !each.isScored())
        .findFirst();
  }

  private Rotation rotation(SessionPlan plan, int position) {
    return rotation(context, plan, position);
  }

  /** The rotation as it stands before a position; blocks behind it count as met before. */
  static Rotation rotation(PlanContext context, SessionPlan plan, int position) {
    Rotation rotation = new Rotation(context);
    List<PlannedBlock> blocks = plan.blocks();
    blocks.subList(position, blocks.size()).forEach(rotation::replay);
    blocks.subList(0, position).forEach(rotation::replay);
    return rotation;
  }

  private static BlockId freshName(SessionPlan plan, DrillLine line) {
    return freshName(plan, SessionPlanner.BlockNames.stem(line));
  }

  static BlockId freshName(SessionPlan plan, String stem) {
    SessionPlanner.BlockNames names = new SessionPlanner.BlockNames(Optional.empty());
    BlockId id = names.next(stem);
    while (plan.block(id).isPresent()) {
      id = names.next(stem);
    }
    return id;
  }

  private PlanEdit changed(SessionPlan plan, List<PlannedBlock> blocks) {
    SessionPlan next = plan.withBlocks(blocks);
    return new PlanEdit.Changed(next, reading.check(next));
  }

  /** Whether nobody could be placed in a block of games. */
  static boolean isEmpty(PlannedBlock block) {
    return block.games().isEmpty() && block.kind() != Kind.TOGETHER;
  }

  private static PlanEdit tooFew() {
    return new PlanEdit.Refused(
        "Too few are there for it by then: some come later or have left. Maybe put it where"
            + " everybody is there, or choose a drill for fewer.");
  }

  private static PlanEdit unknown(BlockId block) {
    return new PlanEdit.Refused(
        "The plan has no block \"%s\". Maybe it was taken out already.".formatted(block));
  }

  private static PlanEdit outside(int position, int last) {
    return new PlanEdit.Refused(
        "The place (%d) must be from 0 to %d. Maybe %d.".formatted(position, last, last));
  }
}
