package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Plans a session: warm-ups, drills from the line back to the baseline, full games at the end, as
 * many as fit the booked time, chosen for what those present need.
 *
 * <p><b>Card.</b> In: a {@link PlanProblem}. Out: a {@link PlanAnswer}. Deterministic: the same
 * problem with the same seed gives the same plan. Method: greedy start and annealing ({@code
 * PlanSearch}) over numbers of stints, then pairs and sitters stint by stint ({@code Rotation}); a
 * bound from a relaxation ({@code Relaxation}); one player alone gets rounds of tests ({@code
 * Alone}). Valid for 1 to 40 players. Limits: the order within a stage of the session is that of
 * the catalogue.
 */
public final class SessionPlanner {

  private final PlanContext context;
  private final List<YardstickTimes.Planned> yardsticks;

  private SessionPlanner(PlanProblem problem) {
    context = new PlanContext(problem);
    yardsticks = YardstickTimes.of(problem);
  }

  /**
   * Plans a session.
   *
   * @param problem everything it is made from
   * @return a plan, or sentences that say what to change
   */
  public static PlanAnswer plan(PlanProblem problem) {
    return plan(problem, Optional.empty(), SearchWatch.NOBODY);
  }

  /**
   * Plans a session anew; blocks and games that stay as they were keep their ids.
   *
   * @param problem everything it is made from
   * @param before the plan so far
   * @return a plan, or sentences that say what to change
   */
  public static PlanAnswer planAnew(PlanProblem problem, SessionPlan before) {
    return planAnew(problem, before, SearchWatch.NOBODY);
  }

  /**
   * Plans a session anew while somebody looks on and may end the search early.
   *
   * @param problem everything it is made from
   * @param before the plan so far
   * @param watch hears of the progress
   * @return the best plan found, or sentences that say what to change
   */
  public static PlanAnswer planAnew(PlanProblem problem, SessionPlan before, SearchWatch watch) {
    return plan(problem, Optional.of(before), watch);
  }

  /**
   * Plans a session while somebody looks on and may end the search early.
   *
   * @param problem everything it is made from
   * @param watch hears of the progress
   * @return the best plan found, or sentences that say what to change
   */
  public static PlanAnswer plan(PlanProblem problem, SearchWatch watch) {
    return plan(problem, Optional.empty(), watch);
  }

  private static PlanAnswer plan(
      PlanProblem problem, Optional<SessionPlan> before, SearchWatch watch) {
    List<String> sentences = WishCheck.problems(problem);
    return sentences.isEmpty()
        ? new SessionPlanner(problem).search(before, watch)
        : new PlanAnswer.Refused(sentences);
  }

  /** The time of warm-ups and tests, which the search does not change. */
  static double fixedMinutes(PlanProblem problem) {
    double warmUps =
        WarmUpTimes.of(problem).stream().mapToDouble(WarmUpTimes.WarmUp::minutes).sum();
    double tests =
        YardstickTimes.of(problem).stream().mapToDouble(YardstickTimes.Planned::minutes).sum();
    return warmUps + tests;
  }

  private PlanAnswer search(Optional<SessionPlan> before, SearchWatch watch) {
    double fixedMinutes = fixedMinutes(context.problem());
    SearchModel model = new SearchModel(context, 60 * fixedMinutes);
    if (context.attendees().size() == 1) {
      return alone(model);
    }
    if (model.options().isEmpty()) {
      return new PlanAnswer.Refused(
          List.of(
              "No drill is left that those present may play. Maybe ease a limit, or allow a drill"
                  + " that was ruled out."));
    }
    SearchRules rules = new SearchRules(model);
    Walk asked = Walk.through(model, rules.pinnedStints());
    if (rules.fitsTheBookedTime(asked) > 0 && sum(rules.pinnedStints()) > 0) {
      return new PlanAnswer.Refused(
          List.of(tooMuchAskedFor(asked.reservedMinutes(rules.reserve()))));
    }
    int[] stints = new PlanSearch(model, rules, context.wish().seed()).best(watch);
    PlanReading reading = new PlanReading(context, model, rules);
    PlanBuilder builder = new PlanBuilder(context, before);
    int[] fitting = new PlanFitting(model, rules, builder, reading).fit(stints);
    if (sum(fitting) == 0) {
      return new PlanAnswer.Refused(List.of(tooShort(model, fixedMinutes)));
    }
    SessionPlan plan = builder.build(Walk.through(model, fitting));
    return new PlanAnswer.Planned(plan, reading.check(plan));
  }

  private PlanAnswer alone(SearchModel model) {
    PlanReading reading = new PlanReading(context, model, new SearchRules(model));
    return new Alone(context)
        .plan(reading)
        .<PlanAnswer>map(plan -> new PlanAnswer.Planned(plan, reading.check(plan)))
        .orElseGet(
            () ->
                new PlanAnswer.Refused(
                    List.of(
                        "%d minutes are too few for the warm-up and a round of balls."
                                .formatted(context.wish().minutes())
                            + " Maybe book %d minutes.".formatted(context.wish().minutes() + 20))));
  }

  private String tooShort(SearchModel model, double fixedMinutes) {
    double shortest =
        model.options().stream().mapToDouble(each -> each.blockSeconds(1) / 60).min().orElseThrow();
    long bookable = 10 * (long) Math.ceil((1.4 * shortest + fixedMinutes + 2) / 10);
    String first = yardsticks.isEmpty() ? "the warm-up takes" : "warm-up and test take";
    return "%d minutes are too few: %s %.1f and the shortest drill about %.1f."
            .formatted(context.wish().minutes(), first, fixedMinutes, shortest)
        + " Maybe book %d minutes.".formatted(bookable);
  }

  private String tooMuchAskedFor(double minutes) {
    return "What is asked for needs %.0f minutes with warm-ups, but %d are booked."
            .formatted(Math.ceil(minutes), context.wish().minutes())
        + " Maybe ask for fewer rounds or book longer.";
  }

  private static int sum(int[] stints) {
    int sum = 0;
    for (int each : stints) {
      sum += each;
    }
    return sum;
  }

  /** Ids of blocks: the drill, the line and a number; the same in a plan made anew. */
  static final class BlockNames {

    private final Set<String> used = new HashSet<>();
    private final List<String> kept = new ArrayList<>();

    BlockNames(Optional<SessionPlan> before) {
      before.ifPresent(plan -> plan.blocks().forEach(block -> kept.add(block.id().value())));
    }

    static String stem(DrillLine line) {
      if (line.players() > 2 || !line.isScored()) {
        return line.drill().key().value();
      }
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
