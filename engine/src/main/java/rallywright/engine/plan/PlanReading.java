package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.pace.SessionTime;

/** Reads a plan: its clock, coverage, benefit and broken rules. */
final class PlanReading {

  private static final double ROUNDING = 1e-9;

  private final PlanContext context;
  private final SearchModel model;
  private final SearchRules rules;
  private final double bound;
  private final Optional<Alone> alone;

  PlanReading(PlanContext context, SearchModel model, SearchRules rules) {
    this.context = context;
    this.model = model;
    this.rules = rules;
    this.bound = Relaxation.bound(model, rules);
    this.alone =
        context.attendees().size() == 1 ? Optional.of(new Alone(context)) : Optional.empty();
  }

  PlanCheck check(SessionPlan plan) {
    PlanCheck.Clock clock = clock(plan);
    double[][] minutes = minutes(plan);
    double benefit = alone.map(each -> each.benefit(plan)).orElse(0.0);
    for (int drill = 0; drill < minutes.length; drill++) {
      benefit += model.benefit(drill, minutes[drill]);
    }
    return new PlanCheck(
        clock,
        byGroup(minutes),
        benefit,
        benefit + better(plan, benefit),
        new PlanRules(plan, context, clock).broken(),
        new PlanNotes(plan, context).all());
  }

  private double better(SessionPlan plan, double benefit) {
    if (alone.isPresent()) {
      double best = alone.get().plan(this).map(alone.get()::benefit).orElse(benefit);
      return better(best - benefit);
    }
    double worth = benefit - rules.smallPrices(Walk.through(model, stints(plan)));
    return better(bound - worth);
  }

  /** By how much another plan could be better; what only rounding leaves is nothing. */
  private static double better(double better) {
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
      int option = option(block);
      if (option >= 0) {
        stints[option] += Math.max(1, context.stints(block).size());
      }
    }
    return stints;
  }

  /**
   * Minutes that a player of each company who may play a drill plays it on average, sit-outs shared
   * evenly.
   */
  private double[][] minutes(SessionPlan plan) {
    Presence presence = context.presence();
    double[][] minutes = new double[model.drills()][presence.companies()];
    double clock = 0;
    for (PlannedBlock block : plan.blocks()) {
      int option = option(block);
      double[] ofDrill = option < 0 ? new double[0] : minutes[model.options().get(option).drill()];
      for (long there : option < 0 ? List.<Long>of() : companies(block, clock)) {
        double each = model.part(option, there).minutes();
        for (int company = 0; company < ofDrill.length; company++) {
          ofDrill[company] += (there >> company & 1) == 0 ? 0 : each;
        }
      }
      clock += block.time().mean();
    }
    return minutes;
  }

  /** Which option a block is, or a number below 0 where it is none. */
  private int option(PlannedBlock block) {
    if (block.kind() == PlannedBlock.Kind.TOGETHER || !block.games().isEmpty()) {
      DrillLine line = context.lineOf(block);
      for (int i = 0; i < model.options().size(); i++) {
        if (model.options().get(i).line().equals(line)) {
          return i;
        }
      }
    }
    return -1;
  }

  /** Who is there for each stint of a block. */
  private List<Long> companies(PlannedBlock block, double startMinute) {
    Presence presence = context.presence();
    int stints = Math.max(1, context.stints(block).size());
    if (presence.isThroughout()) {
      return Collections.nCopies(stints, presence.everybody());
    }
    if (block.games().isEmpty()) {
      double until = startMinute + block.time().mean();
      return List.of(presence.during(startMinute + BlockClock.BLOCK_SECONDS / 60, until));
    }
    return BlockClock.spans(block, startMinute, context).stream()
        .map(span -> presence.during(span.fromMinute(), span.untilMinute()))
        .toList();
  }

  private Map<SkillGroup, Double> byGroup(double[][] minutes) {
    Map<SkillGroup, Double> groups = new EnumMap<>(SkillGroup.class);
    for (SkillGroup group : SkillGroup.values()) {
      groups.put(group, 0.0);
    }
    int players = context.attendees().size();
    for (int drill = 0; drill < minutes.length; drill++) {
      double sum = 0;
      for (int place = 0; place < players; place++) {
        sum += minutes[drill][context.presence().companyOf(place)];
      }
      if (sum > 0) {
        double each = sum / players;
        Reasons.load(context.problem().drills().get(drill))
            .forEach((skill, share) -> groups.merge(skill.group(), share * each, Double::sum));
      }
    }
    return groups;
  }
}
