package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.plan.PlanCheck.BrokenRule;
import rallywright.engine.plan.PlannedBlock.Kind;

/** The rules of a session, each looked for in a whole plan and answered in a sentence. */
final class PlanRules {

  /** Hard minutes are counted on average; so much more is let pass. */
  static final double HARD_TOLERANCE_MINUTES = 0.5;

  private final SessionPlan plan;
  private final PlanContext context;
  private final PlanCheck.Clock clock;

  PlanRules(SessionPlan plan, PlanContext context, PlanCheck.Clock clock) {
    this.plan = plan;
    this.context = context;
    this.clock = clock;
  }

  List<BrokenRule> broken() {
    List<BrokenRule> broken = new ArrayList<>();
    for (Optional<BrokenRule> each :
        List.of(
            fitsTheBookedTime(),
            warmUpsComeFirst(),
            fromTheLineBackToTheBaseline(),
            hardMinutesAreLimited(),
            waterInLongSessions(),
            everySkillGroupIsTouched(),
            restsComeOften(),
            bothDirectionsAreUsed(),
            blocksEndAsAsked())) {
      each.ifPresent(broken::add);
    }
    new RequestRules(plan, context).all().forEach(each -> each.ifPresent(broken::add));
    new PeopleRules(plan, context).all().forEach(each -> each.ifPresent(broken::add));
    return broken;
  }

  private static Optional<BrokenRule> broken(PlanRule rule, String sentence) {
    return Optional.of(new BrokenRule(rule, sentence));
  }

  private List<PlannedBlock> played() {
    return plan.blocks().stream().filter(block -> !block.games().isEmpty()).toList();
  }

  /** The blocks that train something: games, and what is played together. */
  private List<PlannedBlock> worked() {
    return plan.blocks().stream()
        .filter(block -> !block.games().isEmpty() || block.kind() == Kind.TOGETHER)
        .toList();
  }

  /** "We are off the court in time, nine times in ten." */
  Optional<BrokenRule> fitsTheBookedTime() {
    if (clock.fits()) {
      return Optional.empty();
    }
    return broken(
        PlanRule.BOOKED_TIME,
        "The session needs %.0f minutes to be safe, but %.0f are booked. Maybe take out a game."
            .formatted(Math.ceil(clock.minutesReserved()), clock.minutesBooked()));
  }

  /** "Nobody strikes a hard ball cold." */
  Optional<BrokenRule> warmUpsComeFirst() {
    int first = plan.blocks().size();
    int last = -1;
    Set<DrillKind> kinds = new HashSet<>();
    for (int i = 0; i < plan.blocks().size(); i++) {
      PlannedBlock block = plan.blocks().get(i);
      if (block.kind() == Kind.WARM_UP) {
        last = i;
        context.findDrill(block.drill()).ifPresent(drill -> kinds.add(drill.kind()));
      } else {
        first = Math.min(first, i);
      }
    }
    if (last > first) {
      return broken(
          PlanRule.WARM_UP_FIRST, "A warm-up stands after a game. Maybe move it to the start.");
    }
    boolean asked = context.wish().warmUps() == WarmUps.FIRST;
    return asked && kinds.isEmpty()
        ? broken(PlanRule.WARM_UP_FIRST, "The session has no warm-up. Maybe add one at the start.")
        : Optional.empty();
  }

  /** "From the line back to the baseline, then all together." */
  Optional<BrokenRule> fromTheLineBackToTheBaseline() {
    Progression reached = Progression.WARM_UP;
    for (PlannedBlock block : worked()) {
      Drill drill = context.drill(block.drill());
      if (drill.progression().compareTo(reached) < 0) {
        return broken(
            PlanRule.FROM_THE_LINE_BACK,
            "%s comes after drills from farther back. Maybe move it forward."
                .formatted(drill.name()));
      }
      reached = drill.progression();
    }
    return Optional.empty();
  }

  /** "After so many hard minutes comes an easier block or a rest." */
  Optional<BrokenRule> hardMinutesAreLimited() {
    double run = 0;
    for (PlannedBlock block : plan.blocks()) {
      boolean hard =
          context.findDrill(block.drill()).map(Drill::intensity).orElse(Intensity.EASY)
              == Intensity.HARD;
      run = hard ? run + block.time().mean() : 0;
      if (run > context.wish().maxHardMinutes() + HARD_TOLERANCE_MINUTES) {
        return broken(
            PlanRule.HARD_MINUTES,
            "%.0f hard minutes follow one another, %.0f are allowed. Maybe put a break between."
                .formatted(run, context.wish().maxHardMinutes()));
      }
    }
    return Optional.empty();
  }

  /** "Long sessions have a water break." */
  Optional<BrokenRule> waterInLongSessions() {
    boolean water = plan.blocks().stream().anyMatch(block -> block.kind() == Kind.BREAK);
    return clock.minutesMean() > Walk.LONG_SESSION_MINUTES && !water
        ? broken(
            PlanRule.WATER_BREAK,
            "The session lasts %.0f minutes without a water break. Maybe add one half-way."
                .formatted(clock.minutesMean()))
        : Optional.empty();
  }

  /** "Touch everything once: soft game, hands, power." Only where the coach asks for it. */
  Optional<BrokenRule> everySkillGroupIsTouched() {
    Set<SkillGroup> touched = EnumSet.noneOf(SkillGroup.class);
    for (PlannedBlock block : worked()) {
      touched.addAll(SearchModel.groups(context.drill(block.drill())));
    }
    boolean alone = context.attendees().size() == 1;
    if (context.wish().coverage() == Coverage.NEEDS || alone) {
      return Optional.empty();
    }
    for (SkillGroup group : SkillGroup.values()) {
      if (!touched.contains(group)) {
        return broken(
            PlanRule.COVERAGE,
            "No drill trains the group \"%s\". Maybe add one.".formatted(group.words()));
      }
    }
    return Optional.empty();
  }

  /** "In the heat everybody rests as often as asked for", give or take half a block. */
  Optional<BrokenRule> restsComeOften() {
    Optional<Requests.Rests> rests = context.wish().requests().rests();
    double since = 0;
    for (PlannedBlock block : rests.isPresent() ? plan.blocks() : List.<PlannedBlock>of()) {
      double minutes = block.time().mean();
      double every = rests.get().everyMinutes();
      if (block.kind() == Kind.BREAK) {
        since = 0;
      } else if (since > 0 && since + minutes / 2 > every + 1) {
        return broken(
            PlanRule.RESTS,
            "%.0f minutes pass without a rest, one is due after %.0f. Maybe add a rest before it."
                .formatted(since + minutes, every));
      } else {
        since += minutes;
      }
    }
    return Optional.empty();
  }

  /** "Change direction": a drill that goes both ways is played both ways alike. */
  Optional<BrokenRule> bothDirectionsAreUsed() {
    Map<Drill, int[]> rounds = new LinkedHashMap<>();
    for (PlannedBlock block : played()) {
      DrillLine line = context.lineOf(block);
      if (DrillLine.allOf(List.of(line.drill())).size() == 2) {
        int[] both = rounds.computeIfAbsent(line.drill(), key -> new int[2]);
        both[line.line() == Line.STRAIGHT ? 0 : 1] += context.stints(block).size();
      }
    }
    for (Map.Entry<Drill, int[]> each : rounds.entrySet()) {
      int apart = Math.abs(each.getValue()[0] - each.getValue()[1]);
      if (apart > 1 && !isPinned(each.getKey())) {
        return broken(
            PlanRule.DIRECTIONS,
            "%s is played %d rounds more one way than the other. Maybe change direction."
                .formatted(each.getKey().name(), apart));
      }
    }
    return Optional.empty();
  }

  private boolean isPinned(Drill drill) {
    return context.wish().requests().slots().stream()
        .anyMatch(slot -> slot instanceof Slot.Pinned pin && pin.drill().equals(drill.key()));
  }

  /** "Blocks end by the horn or with the last lane, as asked for." */
  Optional<BrokenRule> blocksEndAsAsked() {
    Requests.Ends asked = context.wish().requests().ends();
    for (PlannedBlock block : played()) {
      boolean horn = block.end() == PlannedBlock.End.BY_CLOCK;
      boolean wrong =
          switch (asked) {
            case USUAL -> false;
            case BY_CLOCK -> !horn;
            case LAST_LANE -> horn;
          };
      if (wrong) {
        return broken(
            PlanRule.BLOCK_ENDS,
            "%s ends %s, but another end was asked for. Maybe plan it anew."
                .formatted(
                    context.drill(block.drill()).name(),
                    horn ? "by the horn" : "with its last lane"));
      }
    }
    return Optional.empty();
  }
}
