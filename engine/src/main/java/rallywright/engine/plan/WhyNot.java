package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;

/**
 * Answers "why not this drill?": with the rule that stands against it, or with what the rest of the
 * session would lose if it came in.
 *
 * <p>For the maintainer: one round of the drill is put in, the rounds whose loss costs least go
 * until the session fits again, then what still fits comes in. That is a plan the search could have
 * chosen, so the loss told is never too small by more than the search missed.
 */
public final class WhyNot {

  private final PlanContext context;
  private final SearchModel model;
  private final SearchRules rules;
  private final PlanReading reading;

  /** The answer. */
  public sealed interface Answer {

    /**
     * The answer in words.
     *
     * @return one or two sentences
     */
    String sentence();
  }

  /**
   * The drill is in the plan.
   *
   * @param sentence why
   */
  public record InThePlan(String sentence) implements Answer {}

  /**
   * A rule stands against it.
   *
   * @param rule which one
   * @param sentence what it says
   */
  public record AgainstARule(PlanRule rule, String sentence) implements Answer {}

  /**
   * It would cost more than it brings.
   *
   * @param share the share of the benefit that would be lost, 0 or more
   * @param sentence what would go
   */
  public record Costs(double share, String sentence) implements Answer {}

  private WhyNot(PlanProblem problem) {
    context = new PlanContext(problem);
    model = new SearchModel(context, 60 * SessionPlanner.fixedMinutes(problem));
    rules = new SearchRules(model);
    reading = new PlanReading(context, model, rules);
  }

  /**
   * For plans of a problem.
   *
   * @param problem everything the plan was made from
   * @return the one to ask
   */
  public static WhyNot of(PlanProblem problem) {
    return new WhyNot(problem);
  }

  /**
   * Why a drill is not in a plan.
   *
   * @param plan the plan
   * @param key the drill
   * @return the rule or the loss; or that the drill is in the plan
   */
  public Answer about(SessionPlan plan, DrillKey key) {
    Optional<PlannedBlock> block =
        plan.blocks().stream().filter(each -> each.drill().equals(key)).findFirst();
    if (block.isPresent()) {
      return new InThePlan("It is in the plan. " + block.get().reason());
    }
    Optional<Drill> drill = context.findDrill(key);
    if (drill.isEmpty() || !DrillLine.isPlayedOnCourt(drill.get())) {
      return new AgainstARule(
          PlanRule.WARM_UP_FIRST,
          "\"%s\" is no game of the catalogue; warm-ups are planned by themselves.".formatted(key));
    }
    for (DrillLine line : DrillLine.allOf(List.of(drill.get()))) {
      Optional<PlanCheck.BrokenRule> obstacle = new Availability(context).obstacle(line);
      if (obstacle.isPresent()) {
        return new AgainstARule(obstacle.get().rule(), obstacle.get().sentence());
      }
    }
    return costs(reading.stints(plan), drill.get());
  }

  private Answer costs(int[] now, Drill drill) {
    int[] best = new int[0];
    for (int i = 0; i < now.length; i++) {
      if (model.options().get(i).line().drill().equals(drill)) {
        int[] with = with(now, i);
        best = best.length == 0 || score(with) > score(best) ? with : best;
      }
    }
    if (best.length == 0 || rules.fitsTheBookedTime(Walk.through(model, best)) > 0) {
      return new AgainstARule(
          PlanRule.BOOKED_TIME,
          "One round of %s does not fit beside what must be in the session. Maybe book longer."
              .formatted(drill.name()));
    }
    if (rules.enoughAreThere(Walk.through(model, best)) > 0) {
      return new AgainstARule(
          PlanRule.PRESENCE,
          "When the turn of %s comes, too few are there for it: some come later or have left."
                  .formatted(drill.name())
              + " Maybe let them stay longer, or choose a drill for fewer.");
    }
    double loss = (score(now) - score(best)) / Math.max(1e-9, score(now));
    if (loss <= 0.005) {
      return new Costs(
          Math.max(0, loss),
          "%s would do about as well%s.".formatted(drill.name(), instead(now, best)));
    }
    long cost = Math.max(1, Math.round(100 * loss));
    return new Costs(
        loss,
        "%s would take %d in 100 of what the session brings%s."
            .formatted(drill.name(), cost, instead(now, best)));
  }

  private double score(int[] stints) {
    return rules.score(Walk.through(model, stints));
  }

  private int[] with(int[] now, int option) {
    int[] stints = now.clone();
    stints[option]++;
    while (rules.fitsTheBookedTime(Walk.through(model, stints)) > 0) {
      int least = -1;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < stints.length; i++) {
        if (i != option && stints[i] > 0) {
          double worth = worth(stints, i, -1);
          least = worth > most ? i : least;
          most = Math.max(most, worth);
        }
      }
      if (least < 0) {
        return stints;
      }
      stints[least]--;
    }
    return filled(stints);
  }

  private int[] filled(int[] stints) {
    while (true) {
      int best = -1;
      double most = score(stints);
      for (int i = 0; i < stints.length; i++) {
        if (stints[i] < model.options().get(i).mostStints()) {
          stints[i]++;
          double score = score(stints);
          stints[i]--;
          best = score > most + 1e-9 ? i : best;
          most = Math.max(most, score);
        }
      }
      if (best < 0) {
        return stints;
      }
      stints[best]++;
    }
  }

  private double worth(int[] stints, int option, int change) {
    stints[option] += change;
    double worth = rules.worth(Walk.through(model, stints));
    stints[option] -= change;
    return worth;
  }

  /** What would go for it. */
  private String instead(int[] now, int[] best) {
    Set<String> gone = new TreeSet<>();
    for (int i = 0; i < now.length; i++) {
      if (best[i] < now[i]) {
        gone.add(model.options().get(i).line().drill().name());
      }
    }
    List<String> names = new ArrayList<>(gone);
    return names.isEmpty() ? "" : ": less of " + String.join(" and ", names);
  }
}
