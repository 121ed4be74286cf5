package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.PlanCheck.BrokenRule;
import rallywright.engine.score.Side;

/** The rules of a plan that are about people and places, each answered in a sentence. */
final class PeopleRules {

  private final SessionPlan plan;
  private final PlanContext context;

  PeopleRules(SessionPlan plan, PlanContext context) {
    this.plan = plan;
    this.context = context;
  }

  List<Optional<BrokenRule>> all() {
    return List.of(
        everyonePlaysOrSitsOnce(),
        lanesOfACourtFitTogether(),
        bothRolesAreTaken(),
        limitsAreRespected(),
        sitOutsAreEven());
  }

  private static Optional<BrokenRule> broken(PlanRule rule, String sentence) {
    return Optional.of(new BrokenRule(rule, sentence));
  }

  private List<PlannedBlock> played() {
    return plan.blocks().stream().filter(block -> !block.games().isEmpty()).toList();
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
              PlanRule.EVERYONE_ONCE,
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
          if (!one.id().equals(other.id()) && one.turn() == other.turn() && collide(one, other)) {
            return broken(
                PlanRule.LANES_OF_A_COURT,
                "%s and %s cannot be used at once. Maybe move one game to another court."
                    .formatted(one.place().words(), other.place().words()));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean collide(PlannedGame one, PlannedGame other) {
    boolean whole = one.takesWholeCourt() || other.takesWholeCourt();
    return one.place().court() == other.place().court()
        && (whole || !one.place().lane().sharesCourtWith(other.place().lane()));
  }

  /** "Both of a pair take both roles of an uneven drill", limits allowing. */
  Optional<BrokenRule> bothRolesAreTaken() {
    for (PlannedBlock block : played()) {
      DrillLine line = context.lineOf(block);
      if (!line.swapsRoles()) {
        continue;
      }
      for (PlannedGame game : block.games()) {
        List<PlayerId> all = players(game);
        boolean free = all.stream().allMatch(each -> access(each, line) == RoleAccess.BOTH);
        if (free && !all.stream().allMatch(each -> takesBoth(block, each))) {
          return broken(
              PlanRule.BOTH_ROLES,
              "%s and %s play %s in one role only. Maybe add the game with roles swapped."
                  .formatted(
                      names(game.a()), names(game.b()), context.drill(block.drill()).name()));
        }
      }
    }
    return Optional.empty();
  }

  private static List<PlayerId> players(PlannedGame game) {
    List<PlayerId> players = new ArrayList<>(game.a().players());
    players.addAll(game.b().players());
    return players;
  }

  private String names(Seat seat) {
    return seat.players().stream().map(context::name).collect(Collectors.joining(" and "));
  }

  private RoleAccess access(PlayerId player, DrillLine line) {
    return context.access(context.attendee(player), line.drill());
  }

  private static boolean takesBoth(PlannedBlock block, PlayerId player) {
    return block.games().stream().anyMatch(game -> game.a().players().contains(player))
        && block.games().stream().anyMatch(game -> game.b().players().contains(player));
  }

  /** "Nobody is asked to do what they should not do." The limit itself is not named. */
  Optional<BrokenRule> limitsAreRespected() {
    for (PlannedBlock block : played()) {
      DrillLine line = context.lineOf(block);
      for (PlannedGame game : block.games()) {
        boolean spared =
            game.a().players().stream().allMatch(each -> access(each, line).mayTake(Side.A))
                && game.b().players().stream().allMatch(each -> access(each, line).mayTake(Side.B));
        if (!spared) {
          return broken(
              PlanRule.LIMITS,
              "%s asks a player for something to be spared. Maybe choose another drill."
                  .formatted(line.drill().name()));
        }
      }
    }
    return Optional.empty();
  }

  /** "Everybody sits out as often as the others", those who must sit for a limit aside. */
  Optional<BrokenRule> sitOutsAreEven() {
    int[] sits = sitOuts();
    int[] counted =
        context.attendees().stream()
            .filter(each -> each.limits().isEmpty() && each.practises())
            .mapToInt(each -> sits[context.placeOf(each.id())])
            .sorted()
            .toArray();
    int apart = counted.length == 0 ? 0 : counted[counted.length - 1] - counted[0];
    return apart > 1
        ? broken(
            PlanRule.SIT_OUTS,
            "Somebody sits out %d times more often than another. Maybe swap them, or add games."
                .formatted(apart))
        : Optional.empty();
  }

  /** How often each player has no part in a stint. */
  int[] sitOuts() {
    int[] sits = new int[context.attendees().size()];
    for (PlannedBlock block : played()) {
      int turns = context.turnsPerStint(block);
      for (int turn = 0; turn + turns <= block.turns(); turn += turns) {
        Set<PlayerId> sitting = new HashSet<>(block.sitting().get(turn));
        block.sitting().subList(turn, turn + turns).forEach(sitting::retainAll);
        sitting.forEach(player -> sits[context.placeOf(player)]++);
      }
    }
    return sits;
  }
}
