package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.pace.SessionTime;
import rallywright.engine.pace.Timing;

/** Reads a plan: its clock, coverage, benefit and broken rules. */
final class PlanReading {

  private final PlanContext context;
  private final SearchModel model;
  private final double bound;

  PlanReading(PlanContext context, SearchModel model, SearchRules rules) {
    this.context = context;
    this.model = model;
    this.bound = Relaxation.bound(model, rules.reserve());
  }

  PlanCheck check(SessionPlan plan) {
    PlanCheck.Clock clock = clock(plan);
    double[] minutes = minutesByDrill(plan);
    return new PlanCheck(
        clock,
        byGroup(minutes),
        model.benefit(minutes),
        bound,
        new PlanRules(plan, context, clock).broken());
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

  /** Minutes that a player who may play the drill plays it, sit-outs shared evenly. */
  private double[] minutesByDrill(SessionPlan plan) {
    double[] minutes = new double[model.drills()];
    for (PlannedBlock block : plan.blocks()) {
      if (block.games().isEmpty()) {
        continue;
      }
      Drill drill = context.drill(block.drill());
      int place = context.problem().drills().indexOf(drill);
      for (List<PlannedGame> stint : context.stints(block)) {
        List<List<Timing>> lanes = context.laneTimings(block, stint);
        double played = BlockClock.stint(lanes, block.end()).playedSeconds() / 60;
        minutes[place] += played * 2 * lanes.size() / context.eligible(drill).size();
      }
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
