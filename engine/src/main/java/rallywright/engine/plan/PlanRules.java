package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.plan.PlanCheck.BrokenRule;
import rallywright.engine.plan.PlannedBlock.Kind;
import rallywright.engine.score.Side;

/** The rules of a session, each looked for in a whole plan and answered in a sentence. */
final class PlanRules {

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
            everyonePlaysOrSitsOnce(),
            lanesOfACourtFitTogether(),
            bothRolesAreTaken(),
            limitsAreRespected(),
            sitOutsAreEven())) {
      each.ifPresent(broken::add);
    }
    return broken;
  }

  private static Optional<BrokenRule> broken(String rule, String sentence) {
    return Optional.of(new BrokenRule(rule, sentence));
  }

  private List<PlannedBlock> played() {
    return plan.blocks().stream().filter(block -> !block.games().isEmpty()).toList();
  }

  /** "We are off the court in time, nine times in ten." */
  Optional<BrokenRule> fitsTheBookedTime() {
    if (clock.fits()) {
      return Optional.empty();
    }
    return broken(
        "booked time",
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
      return broken("warm-up first", "A warm-up stands after a game. Maybe move it to the start.");
    }
    boolean asked = context.wish().warmUps() == WarmUps.FIRST;
    return asked && kinds.isEmpty()
        ? broken("warm-up first", "The session has no warm-up. Maybe add one at the start.")
        : Optional.empty();
  }

  /** "From the line back to the baseline, then all together." */
  Optional<BrokenRule> fromTheLineBackToTheBaseline() {
    Progression reached = Progression.WARM_UP;
    for (PlannedBlock block : played()) {
      Drill drill = context.drill(block.drill());
      if (drill.progression().compareTo(reached) < 0) {
        return broken(
            "from the line back",
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
      if (run > context.wish().maxHardMinutes() + 0.5) {
        return broken(
            "hard minutes",
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
            "water break",
            "The session lasts %.0f minutes without a water break. Maybe add one half-way."
                .formatted(clock.minutesMean()))
        : Optional.empty();
  }

  /** "Touch everything once: soft game, hands, power." Only where the coach asks for it. */
  Optional<BrokenRule> everySkillGroupIsTouched() {
    Set<SkillGroup> touched = EnumSet.noneOf(SkillGroup.class);
    for (PlannedBlock block : played()) {
      touched.addAll(SearchModel.groups(context.drill(block.drill())));
    }
    if (context.wish().coverage() == Coverage.NEEDS) {
      return Optional.empty();
    }
    for (SkillGroup group : SkillGroup.values()) {
      if (!touched.contains(group)) {
        return broken(
            "coverage",
            "No drill trains the group \"%s\". Maybe add one.".formatted(group.words()));
      }
    }
    return Optional.empty();
  }

  /** "In every turn each of us plays once or sits out." */
  Optional<BrokenRule> everyonePlaysOrSitsOnce() {
    for (PlannedBlock block : played()) {
      for (int turn = 1; turn <= block.turns(); turn++) {
        List<PlayerId> seen = new ArrayList<>(block.sitting().get(turn - 1));
        for (PlannedGame game : block.games()) {
          if (game.turn() == turn) {
            seen.addAll(game.a().players());
            seen.addAll(game.b().players());
          }
        }
        boolean once = seen.size() == plan.present().size();
        if (!once || !new HashSet<>(seen).equals(new HashSet<>(plan.present()))) {
          return broken(
              "everyone once",
              "In turn %d of %s somebody is missing or placed twice. Maybe plan it anew."
                  .formatted(turn, context.drill(block.drill()).name()));
        }
      }
    }
    return Optional.empty();
  }

  /** "A straight and a cross lane never share a court." */
  Optional<BrokenRule> lanesOfACourtFitTogether() {
    for (PlannedBlock block : played()) {
      for (PlannedGame one : block.games()) {
        for (PlannedGame other : block.games()) {
          if (!one.id().equals(other.id())
              && one.turn() == other.turn()
              && collide(one.place(), other.place())) {
            return broken(
                "lanes of a court",
                "%s and %s cannot be used at once. Maybe move one game to another court."
                    .formatted(one.place().words(), other.place().words()));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean collide(CourtLane one, CourtLane other) {
    return one.court() == other.court() && !one.lane().sharesCourtWith(other.lane());
  }

  /** "Both of a pair take both roles of an uneven drill", limits allowing. */
  Optional<BrokenRule> bothRolesAreTaken() {
    for (PlannedBlock block : played()) {
      Drill drill = context.drill(block.drill());
      if (DrillLine.turnsPerStint(drill) < 2) {
        continue;
      }
      for (PlannedGame game : block.games()) {
        boolean free =
            context.access(playerA(game), drill) == RoleAccess.BOTH
                && context.access(playerB(game), drill) == RoleAccess.BOTH;
        boolean swapped = block.games().stream().anyMatch(each -> swapped(each, game));
        if (free && !swapped) {
          return broken(
              "both roles",
              "%s and %s play %s in one role only. Maybe add the game with roles swapped."
                  .formatted(playerA(game).name(), playerB(game).name(), drill.name()));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean swapped(PlannedGame one, PlannedGame other) {
    return one.a().players().equals(other.b().players())
        && one.b().players().equals(other.a().players());
  }

  private Attendee playerA(PlannedGame game) {
    return context.attendee(game.a().players().get(0));
  }

  private Attendee playerB(PlannedGame game) {
    return context.attendee(game.b().players().get(0));
  }

  /** "Nobody is asked to do what they should not do." The limit itself is not named. */
  Optional<BrokenRule> limitsAreRespected() {
    for (PlannedBlock block : played()) {
      Drill drill = context.drill(block.drill());
      for (PlannedGame game : block.games()) {
        if (!context.access(playerA(game), drill).mayTake(Side.A)
            || !context.access(playerB(game), drill).mayTake(Side.B)) {
          return broken(
              "limits",
              "%s asks a player for something to be spared. Maybe choose another drill."
                  .formatted(drill.name()));
        }
      }
    }
    return Optional.empty();
  }

  /** "Everybody sits out as often as the others", those who must sit for a limit aside. */
  Optional<BrokenRule> sitOutsAreEven() {
    int[] sits = sitOuts();
    int[] counted =
        Arrays.stream(context.attendees().toArray(Attendee[]::new))
            .filter(each -> each.limits().isEmpty())
            .mapToInt(each -> sits[context.placeOf(each.id())])
            .sorted()
            .toArray();
    int apart = counted.length == 0 ? 0 : counted[counted.length - 1] - counted[0];
    return apart > 1
        ? broken(
            "sit-outs",
            "Somebody sits out %d times more often than another. Maybe swap them, or add games."
                .formatted(apart))
        : Optional.empty();
  }

  /** How often each player sits out, by stint. */
  int[] sitOuts() {
    int[] sits = new int[context.attendees().size()];
    for (PlannedBlock block : played()) {
      int turns = DrillLine.turnsPerStint(context.drill(block.drill()));
      for (int turn = 0; turn < block.turns(); turn += turns) {
        block.sitting().get(turn).forEach(player -> sits[context.placeOf(player)]++);
      }
    }
    return sits;
  }
}
