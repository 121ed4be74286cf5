package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.pace.Timing;
import rallywright.engine.plan.BlockClock.StintTime;
import rallywright.engine.practice.Needs;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.PointWorth;
import rallywright.engine.score.Side;

/** A problem with what is looked up again and again: people, drills, needs and times. */
final class PlanContext {

  private final PlanProblem problem;
  private final Map<PlayerId, Integer> places = new HashMap<>();
  private final Map<DrillKey, Drill> drills = new LinkedHashMap<>();
  private final RememberedWorth worth;
  private final List<Needs> needs = new ArrayList<>();
  private final GameLengths lengths;
  private final Map<Named, UsualStint> usual = new HashMap<>();
  private final Map<Asked, UsualStint> alike = new HashMap<>();
  private final Map<DrillKey, List<RoleAccess>> access = new HashMap<>();
  private final Map<DrillKey, double[]> strengths = new HashMap<>();
  private final Map<Integer, GamesPerHundred> gamesPerHundred = new HashMap<>();
  private final Presence presence;
  private final Map<Played, StintTime> stintTimes = new HashMap<>();

  /** What the time of a stint depends on: the games of each lane, and how it ends. */
  private record Played(List<List<Timing>> lanes, PlannedBlock.End end) {}

  PlanContext(PlanProblem problem) {
    this.problem = problem;
    worth = new RememberedWorth(problem.knowledge().worth());
    for (Attendee attendee : problem.attendees()) {
      places.put(attendee.id(), places.size());
      needs.add(Needs.of(attendee.standing(), worth));
    }
    problem.drills().forEach(drill -> drills.put(drill.key(), drill));
    lengths = new GameLengths(problem.knowledge().paces());
    presence = new Presence(problem.attendees(), problem.wish());
  }

  Presence presence() {
    return presence;
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

  /** What a player's skills are worth; worked out when it is first asked for. */
  GamesPerHundred gamesPerHundred(int place) {
    return gamesPerHundred.computeIfAbsent(
        place,
        who -> {
          PlayerStanding standing = attendees().get(who).standing();
          return worth.isOf(PointWorth.DOUBLES)
              ? new GamesPerHundred(worth.of(standing))
              : GamesPerHundred.of(standing);
        });
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

  /** Which roles of a drill the player at a place may take. */
  RoleAccess access(int place, Drill drill) {
    List<RoleAccess> known = access.get(drill.key());
    if (known == null) {
      known = attendees().stream().map(each -> access(each, drill)).toList();
      access.put(drill.key(), known);
    }
    return known.get(place);
  }

  /** How strong the player at a place is in a game, in logits. */
  double strength(int place, DrillLine line) {
    double[] known = strengths.get(line.drill().key());
    if (known == null) {
      known =
          attendees().stream()
              .mapToDouble(each -> Matchup.strength(line.game(), each.standing()))
              .toArray();
      strengths.put(line.drill().key(), known);
    }
    return known[place];
  }

  /** The places of those who may play a drill in one role at least. */
  List<Integer> eligible(Drill drill) {
    return eligible(drill, everybody());
  }

  /** Those of some places who may play a drill in one role at least. */
  List<Integer> eligible(Drill drill, List<Integer> there) {
    return there.stream().filter(place -> access(place, drill) != RoleAccess.NEITHER).toList();
  }

  /** The places of all who are there, in a new list. */
  List<Integer> everybody() {
    List<Integer> everybody = new ArrayList<>();
    for (int place = 0; place < attendees().size(); place++) {
      everybody.add(place);
    }
    return everybody;
  }

  Shape shape(DrillLine line) {
    return shape(line, everybody());
  }

  /** How those who are there divide over the places. */
  Shape shape(DrillLine line, List<Integer> there) {
    return Shape.of(line, eligible(line.drill(), there).size(), wish());
  }

  /** The drill and line of a block of games. */
  DrillLine lineOf(PlannedBlock block) {
    Drill drill = drill(block.drill());
    if (block.games().isEmpty()) {
      return DrillLine.allOf(List.of(drill)).get(0);
    }
    return new DrillLine(drill, Line.of(block.games().get(0).place().lane()));
  }

  private record Named(DrillKey drill, Line line) {}

  /** What tells usual stints apart: two lines of a drill with as many lanes are alike. */
  private record Asked(DrillKey drill, Shape shape) {}

  /** What a stint along a line is usually like, whoever meets whom. */
  UsualStint usualStint(DrillLine line) {
    Named named = new Named(line.drill().key(), line.line());
    UsualStint known = usual.get(named);
    if (known == null) {
      Asked asked = new Asked(line.drill().key(), shape(line));
      known = alike.get(asked);
      if (known == null) {
        known = UsualStint.of(line, this);
        alike.put(asked, known);
      }
      usual.put(named, known);
    }
    return known;
  }

  /** As many turns as a group plays before it changes opponents; those of the first round. */
  int turnsPerStint(PlannedBlock block) {
    return shape(lineOf(block), presence.isThroughout() ? everybody() : there(block, 1)).turns();
  }

  /** Who plays or sits out in a turn, by place. */
  List<Integer> there(PlannedBlock block, int turn) {
    Set<PlayerId> there = new HashSet<>(block.sitting().get(turn - 1));
    for (PlannedGame game : block.games()) {
      if (game.turn() == turn) {
        there.addAll(game.a().players());
        there.addAll(game.b().players());
      }
    }
    return there.stream().map(this::placeOf).sorted().toList();
  }

  /** The games of a block by stint: as many turns as a group plays before it changes opponents. */
  List<List<PlannedGame>> stints(PlannedBlock block) {
    if (block.games().isEmpty()) {
      return List.of();
    }
    int turns = turnsPerStint(block);
    Map<Integer, List<PlannedGame>> stints = new TreeMap<>();
    for (PlannedGame game : block.games()) {
      stints.computeIfAbsent((game.turn() - 1) / turns, key -> new ArrayList<>()).add(game);
    }
    return List.copyOf(stints.values());
  }

  /** The time of a stint by those who play in it; worked out once for games of the same times. */
  StintTime stintTime(PlannedBlock block, List<PlannedGame> stint) {
    return stintTimes.computeIfAbsent(
        new Played(laneTimings(block, stint), block.end()),
        played -> BlockClock.stint(played.lanes(), played.end(), lengths.roleSeconds()));
  }

  private List<List<Timing>> laneTimings(PlannedBlock block, List<PlannedGame> stint) {
    Map<CourtLane, List<Timing>> lanes = new LinkedHashMap<>();
    Drill drill = drill(block.drill());
    for (PlannedGame game : stint) {
      lanes.computeIfAbsent(game.place(), key -> new ArrayList<>()).add(timing(drill, game));
    }
    return List.copyOf(lanes.values());
  }

  private Timing timing(Drill drill, PlannedGame planned) {
    DrillForm.Scored game = drill.scored().orElseThrow();
    Matchup matchup = Matchup.of(game, standings(planned.a()), standings(planned.b()));
    return lengths.of(drill, matchup, planned.headStart());
  }

  private List<PlayerStanding> standings(Seat seat) {
    return seat.players().stream().map(each -> attendee(each).standing()).toList();
  }

  /** The time of a game between two sides, with the head start that they would get. */
  Timing usualTiming(DrillLine line, Duel duel) {
    Seat a = seat(line, Side.A, duel.a());
    Seat b = seat(line, Side.B, duel.b());
    HeadStart start = problem.knowledge().fairStarts().of(line.drill(), a, b);
    Matchup matchup = Matchup.of(line.game(), standings(a), standings(b));
    return lengths.of(line.drill(), matchup, start);
  }

  Seat seat(DrillLine line, Side side, List<Integer> places) {
    return new Seat(
        line.layout().sides().of(side).role(),
        places.stream().map(place -> attendees().get(place).id()).toList());
  }
}
