package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.pace.Timing;
import rallywright.engine.practice.Needs;

/** A problem with what is looked up again and again: people, drills, needs and times. */
final class PlanContext {

  private final PlanProblem problem;
  private final Map<PlayerId, Integer> places = new HashMap<>();
  private final Map<DrillKey, Drill> drills = new LinkedHashMap<>();
  private final List<Needs> needs = new ArrayList<>();
  private final GameLengths lengths;

  PlanContext(PlanProblem problem) {
    this.problem = problem;
    for (Attendee attendee : problem.attendees()) {
      places.put(attendee.id(), places.size());
      needs.add(Needs.of(attendee.standing(), problem.knowledge().worth()));
    }
    problem.drills().forEach(drill -> drills.put(drill.key(), drill));
    lengths = new GameLengths(problem.knowledge().paces());
  }

  PlanProblem problem() {
    return problem;
  }

  SessionWish wish() {
    return problem.wish();
  }

  List<Attendee> attendees() {
    return problem.attendees();
  }

  Attendee attendee(PlayerId player) {
    return attendees().get(placeOf(player));
  }

  int placeOf(PlayerId player) {
    Integer place = places.get(player);
    if (place == null) {
      throw new IllegalArgumentException(
          "The player %s is not among those present. Maybe the plan is for another group."
              .formatted(player));
    }
    return place;
  }

  String name(PlayerId player) {
    return attendee(player).name();
  }

  List<Needs> needs() {
    return needs;
  }

  Optional<Drill> findDrill(DrillKey key) {
    return Optional.ofNullable(drills.get(key));
  }

  Drill drill(DrillKey key) {
    return findDrill(key)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "The drill \"%s\" is not in the list of drills. Maybe it was removed."
                        .formatted(key)));
  }

  GameLengths lengths() {
    return lengths;
  }

  RoleAccess access(Attendee attendee, Drill drill) {
    return RoleAccess.of(attendee.limits(), drill);
  }

  /** The places of those who may play a drill in one role at least. */
  List<Integer> eligible(Drill drill) {
    List<Integer> eligible = new ArrayList<>();
    for (int place = 0; place < attendees().size(); place++) {
      if (access(attendees().get(place), drill) != RoleAccess.NEITHER) {
        eligible.add(place);
      }
    }
    return eligible;
  }

  /** The games of a block by stint: as many turns as a pair plays before it changes opponents. */
  List<List<PlannedGame>> stints(PlannedBlock block) {
    int turns = DrillLine.turnsPerStint(drill(block.drill()));
    Map<Integer, List<PlannedGame>> stints = new TreeMap<>();
    for (PlannedGame game : block.games()) {
      stints.computeIfAbsent((game.turn() - 1) / turns, key -> new ArrayList<>()).add(game);
    }
    return List.copyOf(stints.values());
  }

  /** The times of a stint's games, lane by lane. */
  List<List<Timing>> laneTimings(PlannedBlock block, List<PlannedGame> stint) {
    Map<CourtLane, List<Timing>> lanes = new LinkedHashMap<>();
    Drill drill = drill(block.drill());
    for (PlannedGame game : stint) {
      lanes.computeIfAbsent(game.place(), key -> new ArrayList<>()).add(timing(drill, game));
    }
    return List.copyOf(lanes.values());
  }

  private Timing timing(Drill drill, PlannedGame planned) {
    DrillForm.Scored game = drill.scored().orElseThrow();
    Matchup matchup =
        Matchup.of(
            game,
            attendee(planned.a().players().get(0)).standing(),
            attendee(planned.b().players().get(0)).standing());
    return lengths.of(drill, matchup, planned.headStart());
  }

  /** The time of a game between two players, with the head start that they would get. */
  Timing usualTiming(DrillLine line, Attendee a, Attendee b) {
    var sides = line.game().layout().sides();
    Seat first = new Seat(sides.a().role(), List.of(a.id()));
    Seat second = new Seat(sides.b().role(), List.of(b.id()));
    HeadStart start = problem.knowledge().fairStarts().of(line.drill(), first, second);
    Matchup matchup = Matchup.of(line.game(), a.standing(), b.standing());
    return lengths.of(line.drill(), matchup, start);
  }
}
