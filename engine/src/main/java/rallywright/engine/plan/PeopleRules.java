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
        onlyThoseWhoAreTherePlay(),
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
    for (Played turn : turns()) {
      List<PlayerId> seen = new ArrayList<>(turn.sitting());
      seen.addAll(turn.playing());
      Set<PlayerId> once = new HashSet<>(seen);
      boolean twice = once.size() < seen.size() || !plan.present().containsAll(once);
      boolean missing =
          plan.present().stream()
              .anyMatch(player -> !once.contains(player) && isSurelyThere(player, turn));
      if (twice || missing) {
        return broken(
            PlanRule.EVERYONE_ONCE,
            "In turn %d of %s somebody is missing or placed twice. Maybe plan it anew."
                .formatted(turn.number(), context.drill(turn.block().drill()).name()));
      }
    }
    return Optional.empty();
  }

  /** One turn of a block with the time of its round on the plan's clock. */
  private record Played(PlannedBlock block, int number, BlockClock.Span span) {

    List<PlayerId> sitting() {
      return block.sitting().get(number - 1);
    }

    List<PlayerId> playing() {
      return block.games().stream()
          .filter(game -> game.turn() == number)
          .flatMap(game -> players(game).stream())
          .toList();
    }
  }

  private List<Played> turns() {
    List<Played> played = new ArrayList<>();
    BlockClock.Span always = new BlockClock.Span(0, 0);
    double start = 0;
    for (PlannedBlock block : plan.blocks()) {
      List<BlockClock.Span> spans =
          context.presence().isThroughout() ? List.of() : BlockClock.spans(block, start, context);
      int turns = block.games().isEmpty() ? 1 : context.turnsPerStint(block);
      for (int turn = 1; turn <= block.turns() && !block.games().isEmpty(); turn++) {
        int stint = (turn - 1) / turns;
        played.add(new Played(block, turn, stint < spans.size() ? spans.get(stint) : always));
      }
      start += block.time().mean();
    }
    return played;
  }

  /** Whether somebody can play all of a usual round; who stays throughout always can. */
  private boolean isSurelyThere(PlayerId player, Played turn) {
    Presence presence = context.presence();
    if (presence.isThroughout()) {
      return true;
    }
    UsualStint usual = context.usualStint(context.lineOf(turn.block()));
    double from = turn.span().fromMinute() - 2 * Presence.TOLERANCE_MINUTES;
    double until =
        Math.max(turn.span().untilMinute(), from + usual.time().seconds().mean() / 60)
            + 2 * Presence.TOLERANCE_MINUTES;
    return presence.isThere(context.placeOf(player), Math.max(0, from), until);
  }

  /** "Nobody is placed before they are there and warm, or after they have left." */
  Optional<BrokenRule> onlyThoseWhoAreTherePlay() {
    for (Played turn : turns()) {
      Optional<PlayerId> absent = absent(turn);
      if (absent.isPresent()) {
        return broken(
            PlanRule.PRESENCE,
            "%s is there %s, but plays in turn %d of %s, minute %.0f to %.0f."
                    .formatted(
                        context.name(absent.get()),
                        context.attendee(absent.get()).stay().words(),
                        turn.number(),
                        context.drill(turn.block().drill()).name(),
                        turn.span().fromMinute(),
                        turn.span().untilMinute())
                + " Maybe let it be mended.");
      }
    }
    return Optional.empty();
  }

  private Optional<PlayerId> absent(Played turn) {
    Presence presence = context.presence();
    double from = turn.span().fromMinute();
    double until = turn.span().untilMinute();
    return presence.isThroughout()
        ? Optional.empty()
        : turn.playing().stream()
            .filter(player -> !presence.isThere(context.placeOf(player), from, until))
            .findFirst();
  }

  /** The blocks in which somebody is placed who is not there. */
  Set<BlockId> blocksWithSomebodyAbsent() {
    Set<BlockId> blocks = new HashSet<>();
    turns().stream()
        .filter(turn -> absent(turn).isPresent())
        .forEach(turn -> blocks.add(turn.block().id()));
    return blocks;
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

  /**
   * "Everybody sits out as often as the others", those who must sit for a limit aside. To somebody
   * who is not there a round counts as much sitting as to the others on average.
   */
  Optional<BrokenRule> sitOutsAreEven() {
    double[] sits = sitOutsAndMissed();
    double[] counted =
        context.attendees().stream()
            .filter(each -> each.limits().isEmpty() && each.practises())
            .mapToDouble(each -> sits[context.placeOf(each.id())])
            .sorted()
            .toArray();
    double apart = counted.length == 0 ? 0 : counted[counted.length - 1] - counted[0];
    return apart >= 2 - 1e-9
        ? broken(
            PlanRule.SIT_OUTS,
            "Somebody sits out %.0f times more often than another. Maybe swap them, or add games."
                .formatted(Math.floor(apart + 1e-9)))
        : Optional.empty();
  }

  /** How often each player has no part in a stint, by place. */
  int[] sitOuts() {
    int[] sits = new int[context.attendees().size()];
    for (PlannedBlock block : played()) {
      for (Set<PlayerId> sitting : sitting(block)) {
        sitting.forEach(player -> sits[context.placeOf(player)]++);
      }
    }
    return sits;
  }

  private double[] sitOutsAndMissed() {
    double[] sits = new double[context.attendees().size()];
    for (PlannedBlock block : played()) {
      int turns = context.turnsPerStint(block);
      int first = 1;
      for (Set<PlayerId> sitting : sitting(block)) {
        sitting.forEach(player -> sits[context.placeOf(player)]++);
        List<Integer> there = context.there(block, first);
        for (int place = 0; place < sits.length; place++) {
          boolean away = !there.contains(place) && !there.isEmpty();
          sits[place] += away ? (double) sitting.size() / there.size() : 0;
        }
        first += turns;
      }
    }
    return sits;
  }

  /** Who has no part in each stint of a block. */
  private List<Set<PlayerId>> sitting(PlannedBlock block) {
    List<Set<PlayerId>> stints = new ArrayList<>();
    int turns = context.turnsPerStint(block);
    for (int turn = 0; turn + turns <= block.turns(); turn += turns) {
      Set<PlayerId> sitting = new HashSet<>(block.sitting().get(turn));
      block.sitting().subList(turn, turn + turns).forEach(sitting::retainAll);
      stints.add(sitting);
    }
    return stints;
  }
}
