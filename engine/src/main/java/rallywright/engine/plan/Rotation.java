package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;

/**
 * Who meets whom and who sits out, stint after stint.
 *
 * <p>For the maintainer: each stint is a cheapest choice of groups and sitters given what came
 * before: exact for pairs of up to 12 ({@code PairMatching}), by changing seats else ({@code
 * SeatSwaps}). In order of weight: as many play as can; sit-outs even; nobody sits twice running;
 * opponents as new as possible; games of like strength.
 */
final class Rotation {

  private final PlanContext context;
  private final Meetings meetings;
  private final Care care;

  /**
   * One stint.
   *
   * @param lanes the games of each lane, turn by turn
   * @param turns how many turns it has
   */
  record Stint(List<List<Duel>> lanes, int turns) {}

  /** How carefully groups are chosen. */
  enum Care {
    /** Exactly where that is possible. */
    EXACT,
    /** By changing seats only: enough to tell how long games usually last. */
    QUICK
  }

  Rotation(PlanContext context) {
    this(context, Care.EXACT);
  }

  Rotation(PlanContext context, Care care) {
    this.context = context;
    this.care = care;
    this.meetings = new Meetings(context);
  }

  /** Takes a block that is planned already into account. */
  void replay(PlannedBlock block) {
    int firstTurn = 1;
    int turns = block.games().isEmpty() ? 0 : context.turnsPerStint(block);
    for (List<PlannedGame> stint : context.stints(block)) {
      Map<CourtLane, List<Duel>> lanes = new LinkedHashMap<>();
      for (PlannedGame game : stint) {
        Duel duel = new Duel(places(game.a().players()), places(game.b().players()));
        lanes.computeIfAbsent(game.place(), key -> new ArrayList<>()).add(duel);
      }
      remember(List.copyOf(lanes.values()), context.there(block, firstTurn));
      firstTurn += turns;
    }
  }

  private List<Integer> places(List<PlayerId> players) {
    return players.stream().map(context::placeOf).toList();
  }

  private void remember(List<List<Duel>> lanes, List<Integer> there) {
    List<Integer> away = context.everybody();
    away.removeAll(there);
    List<Integer> sitting = new ArrayList<>(there);
    lanes.forEach(lane -> lane.forEach(duel -> sitting.removeAll(duel.players())));
    meetings.remember(lanes, sitting, away);
  }

  /** The next stint of a drill for everybody. */
  Stint next(DrillLine line) {
    List<Integer> everybody = context.everybody();
    return take(choose(line, everybody, context.shape(line).turns()), everybody);
  }

  /** Takes a stint that was chosen into account. */
  Stint take(Stint stint, List<Integer> there) {
    remember(stint.lanes(), there);
    return stint;
  }

  /** How many games of a drill those present can play at once. */
  int groupsPossible(DrillLine line) {
    return choose(line, context.everybody(), context.shape(line).turns()).lanes().size();
  }

  /**
   * The best next stint of a drill for those who are there; without lanes where they are too few.
   */
  Stint choose(DrillLine line, List<Integer> there, int turns) {
    Shape shape = context.shape(line, there).withTurns(turns);
    List<List<Duel>> lanes = new ArrayList<>();
    for (List<Integer> group : groups(line, there, shape)) {
      lanes.add(turns(line, group, turns));
    }
    lanes.sort(
        Comparator.comparingInt(
            lane -> lane.get(0).players().stream().sorted().findFirst().orElseThrow()));
    return new Stint(lanes, turns);
  }

  private List<List<Integer>> groups(DrillLine line, List<Integer> there, Shape shape) {
    List<Integer> eligible = context.eligible(line.drill(), there);
    boolean exact =
        care == Care.EXACT
            && shape.size() == 2
            && shape.threes() == 0
            && eligible.size() <= PairMatching.MOST_PLAYERS;
    return exact
        ? new PairMatching(meetings, line, eligible, shape.groups()).best()
        : new SeatSwaps(meetings, line, eligible, shape).best();
  }

  private List<Duel> turns(DrillLine line, List<Integer> group, int turns) {
    if (group.size() == 3) {
      return Sides.inTurn(line, group);
    }
    Duel first = first(line, group);
    boolean swaps = group.size() == 4 || meetings.mayFace(line, first.b().get(0), first.a().get(0));
    List<Duel> duels = new ArrayList<>();
    for (int turn = 0; turn < turns; turn++) {
      duels.add(turn % 2 == 1 && swaps ? first.swapped() : first);
    }
    return duels;
  }

  private Duel first(DrillLine line, List<Integer> group) {
    if (group.size() == 4) {
      return Sides.best(meetings, line, group);
    }
    int one = group.get(0);
    int other = group.get(1);
    boolean oneFirst = meetings.mayFace(line, one, other);
    boolean otherFirst = meetings.mayFace(line, other, one);
    boolean begins = oneFirst && (!otherFirst || meetings.beginsFirst(one, other));
    return begins ? Duel.of(one, other) : Duel.of(other, one);
  }
}
