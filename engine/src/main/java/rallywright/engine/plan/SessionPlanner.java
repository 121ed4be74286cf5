package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rallywright.engine.plan.SearchModel.Option;

/**
 * Plans a session: warm-ups, drills from the line back to the baseline, full games at the end, as
 * many as fit the booked time, chosen for what those present need.
 *
 * <p><b>Card.</b> In: a {@link PlanProblem}. Out: a {@link PlanAnswer}. Deterministic: the same
 * problem with the same seed gives the same plan. Method: greedy start and annealing ({@code
 * PlanSearch}) over numbers of stints, then pairs and sitters stint by stint ({@code Rotation}); a
 * bound from a relaxation ({@code Relaxation}). Limits: scored games of two on lanes, 2 to 12
 * players; the order within a stage of the session is that of the catalogue.
 */
public final class SessionPlanner {

  private final PlanContext context;
  private final List<WarmUpTimes.WarmUp> warmUps;

  private SessionPlanner(PlanProblem problem) {
    context = new PlanContext(problem);
    warmUps = WarmUpTimes.of(problem);
  }

  /**
   * Plans a session.
   *
   * @param problem everything it is made from
   * @return a plan, or sentences that say what to change
   */
  public static PlanAnswer plan(PlanProblem problem) {
    return plan(problem, Optional.empty());
  }

  /**
   * Plans a session anew; blocks and games that stay as they were keep their ids.
   *
   * @param problem everything it is made from
   * @param before the plan so far
   * @return a plan, or sentences that say what to change
   */
  public static PlanAnswer planAnew(PlanProblem problem, SessionPlan before) {
    return plan(problem, Optional.of(before));
  }

  private static PlanAnswer plan(PlanProblem problem, Optional<SessionPlan> before) {
    List<String> sentences = WishCheck.problems(problem);
    return sentences.isEmpty()
        ? new SessionPlanner(problem).search(before)
        : new PlanAnswer.Refused(sentences);
  }

  private PlanAnswer search(Optional<SessionPlan> before) {
    double warmUpMinutes = warmUps.stream().mapToDouble(WarmUpTimes.WarmUp::minutes).sum();
    SearchModel model = new SearchModel(context, 60 * warmUpMinutes);
    if (model.options().isEmpty()) {
      return new PlanAnswer.Refused(
          List.of(
              "No drill is left that two of those present may play. Maybe ease a limit or add a"
                  + " drill."));
    }
    SearchRules rules = new SearchRules(model);
    int[] stints = new PlanSearch(model, rules, context.wish().seed()).best();
    PlanReading reading = new PlanReading(context, model, rules);
    SessionPlan plan = build(Walk.through(model, stints), before);
    while (sum(stints) > 0 && !reading.clock(plan).fits()) {
      stints = withoutLeast(model, rules, stints);
      plan = build(Walk.through(model, stints), before);
    }
    if (sum(stints) == 0) {
      return new PlanAnswer.Refused(List.of(tooShort(model, warmUpMinutes)));
    }
    return new PlanAnswer.Planned(plan, reading.check(plan));
  }

  private String tooShort(SearchModel model, double warmUpMinutes) {
    double shortest =
        model.options().stream().mapToDouble(each -> each.blockSeconds(1) / 60).min().orElseThrow();
    long bookable = 10 * (long) Math.ceil((1.4 * shortest + warmUpMinutes + 2) / 10);
    return "%d minutes are too few: the warm-up takes %.1f and the shortest drill about %.1f."
            .formatted(context.wish().minutes(), warmUpMinutes, shortest)
        + " Maybe book %d minutes.".formatted(bookable);
  }

  private static int sum(int[] stints) {
    int sum = 0;
    for (int each : stints) {
      sum += each;
    }
    return sum;
  }

  /** The choice without the stint whose loss costs least. */
  private static int[] withoutLeast(SearchModel model, SearchRules rules, int[] stints) {
    int[] best = new int[stints.length];
    double bestScore = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < stints.length; i++) {
      if (stints[i] > 0) {
        int[] next = stints.clone();
        next[i]--;
        double score = rules.score(Walk.through(model, next));
        if (score > bestScore) {
          best = next;
          bestScore = score;
        }
      }
    }
    return best;
  }

  private SessionPlan build(Walk walk, Optional<SessionPlan> before) {
    BlockBuilder builder = new BlockBuilder(context);
    BlockNames names = new BlockNames(before);
    List<PlannedBlock> blocks = new ArrayList<>();
    for (WarmUpTimes.WarmUp warmUp : warmUps) {
      BlockId id = names.next(warmUp.drill().key().value());
      blocks.add(builder.warmUp(id, warmUp.drill(), warmUp.minutes()));
    }
    Rotation rotation = new Rotation(context);
    for (int i = 0; i < walk.stints().length; i++) {
      if (walk.restBefore(i)) {
        blocks.add(builder.water(names.next(BlockBuilder.WATER.value())));
      }
      if (walk.stints()[i] > 0) {
        Option option = walk.model().options().get(i);
        BlockId id = names.next(BlockNames.stem(option.line()));
        blocks.add(builder.games(id, option.line(), walk.stints()[i], rotation));
      }
    }
    SessionWish wish = context.wish();
    return new SessionPlan(
        wish.minutes(),
        wish.courts(),
        context.attendees().stream().map(Attendee::id).toList(),
        blocks);
  }

  /** Ids of blocks: the drill, the line and a number; the same in a plan made anew. */
  static final class BlockNames {

    private final Set<String> used = new HashSet<>();
    private final List<String> kept = new ArrayList<>();

    BlockNames(Optional<SessionPlan> before) {
      before.ifPresent(plan -> plan.blocks().forEach(block -> kept.add(block.id().value())));
    }

    static String stem(DrillLine line) {
      return line.drill().key() + (line.line() == Line.CROSS ? "-cross" : "-straight");
    }

    BlockId next(String stem) {
      for (String name : kept) {
        if (name.matches(Pattern.quote(stem) + "-\\d+") && used.add(name)) {
          return new BlockId(name);
        }
      }
      int number = 1;
      while (!used.add(stem + "-" + number)) {
        number++;
      }
      return new BlockId(stem + "-" + number);
    }
  }
}
