package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.pace.SessionTime;

/** Reads a plan: its clock, coverage, benefit and broken rules. */
final class PlanReading {

  private static final double ROUNDING = 1e-9;

  private final PlanContext context;
  private final SearchModel model;
  private final SearchRules rules;
  private final double bound;

  PlanReading(PlanContext context, SearchModel model, SearchRules rules) {
    this.context = context;
    this.model = model;
    this.rules = rules;
    this.bound = Relaxation.bound(model, rules);
  }

  PlanCheck check(SessionPlan plan) {
    PlanCheck.Clock clock = clock(plan);
    double[] minutes = minutesByDrill(plan);
    double benefit = model.benefit(minutes);
    double worth = benefit - rules.smallPrices(Walk.through(model, stints(plan)));
    return new PlanCheck(
        clock,
        byGroup(minutes),
        benefit,
        benefit + better(worth),
        new PlanRules(plan, context, clock).broken());
  }

  /** By how much another plan could be better; what only rounding leaves is nothing. */
  private double better(double worth) {
    double better = bound - worth;
    return Math.abs(better) < ROUNDING ? 0 : better;
  }

  /** Whether a plan ends in time and never works hard for too long. */
  boolean keepsTheClock(SessionPlan plan) {
    PlanCheck.Clock clock = clock(plan);
    return clock.fits() && new PlanRules(plan, context, clock).hardMinutesAreLimited().isEmpty();
  }

  PlanCheck.Clock clock(SessionPlan plan) {
    List<SessionTime.Part> parts = new ArrayList<>();
    plan.blocks().forEach(block -> parts.add(BlockClock.part(block, context)));
    SessionTime time = SessionTime.of(parts);
    return new PlanCheck.Clock(
        time.timing().mean() / 60,
        time.timing().sd() / 60,
        time.quantile(0.9) / 60,
        time.quantile(context.wish().confidence()) / 60,
        plan.minutes());
  }

  /** The rounds of every option in a plan. */
  int[] stints(SessionPlan plan) {
    int[] stints = new int[model.options().size()];
    for (PlannedBlock block : plan.blocks()) {
      if (block.kind() == PlannedBlock.Kind.TOGETHER || !block.games().isEmpty()) {
        DrillLine line = context.lineOf(block);
        for (int i = 0; i < stints.length; i++) {
          boolean same = model.options().get(i).line().equals(line);
          stints[i] += same ? Math.max(1, context.stints(block).size()) : 0;
        }
      }
    }
    return stints;
  }

  /** Minutes that a player who may play the drill plays it on average, sit-outs shared evenly. */
  private double[] minutesByDrill(SessionPlan plan) {
    double[] minutes = new double[model.drills()];
    int[] stints = stints(plan);
    for (int i = 0; i < stints.length; i++) {
      minutes[model.options().get(i).drill()] +=
          stints[i] * model.options().get(i).minutesPerStint();
    }
    return minutes;
  }

  private Map<SkillGroup, Double> byGroup(double[] minutes) {
    Map<SkillGroup, Double> groups = new EnumMap<>(SkillGroup.class);
    for (SkillGroup group : SkillGroup.values()) {
      groups.put(group, 0.0);
    }
    for (int drill = 0; drill < minutes.length; drill++) {
      if (minutes[drill] > 0) {
        double each = minutes[drill];
        Reasons.load(context.problem().drills().get(drill))
            .forEach((skill, share) -> groups.merge(skill.group(), share * each, Double::sum));
      }
    }
    return groups;
  }
}
