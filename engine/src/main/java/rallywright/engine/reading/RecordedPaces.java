package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rallywright.engine.court.CourtLane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.pace.RallyPace;
import rallywright.engine.plan.DrillPaces;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionProgress;

/**
 * The pace of each drill, and the time of a change of roles, after what phones entered.
 *
 * <p>What can be known from one tap a rally is the mean of wait and rally together, and what a
 * change costs beyond them: the same taps would come if every wait were a second longer and every
 * rally a second shorter. Neither a plan nor a clock needs more.
 *
 * <p>Far-out times are brought in before they count ({@link RallySpan#steady}), so that a ball
 * fetched from the car park does not make the drill slow (median, median absolute deviation and
 * winsorizing: Huber and Ronchetti, <em>Robust Statistics</em>, second edition, chapters 1 and 5,
 * cited from memory). Which entries tell a time: {@link LaneClock}.
 */
public final class RecordedPaces implements DrillPaces {

  /** The usual change of roles weighs like so many timed ones. Assumption of this project. */
  private static final int USUAL_CHANGES = 8;

  /** No change of roles is planned longer: that is a break. Assumption of this project. */
  private static final double LONGEST_CHANGE_SECONDS = 60;

  /** Changes differ by at least so much, for the fence. Assumption of this project. */
  private static final double LEAST_SPREAD_SECONDS = 2;

  private final Map<DrillKey, List<RallySpan>> tapped = new HashMap<>();
  private final Map<DrillKey, List<RallySpan>> results = new HashMap<>();
  private final Map<Drill, List<Double>> changes = new LinkedHashMap<>();
  private final double roleSeconds;

  private RecordedPaces(List<PlayedGame> games, List<SessionProgress> sessions) {
    Map<DrillKey, Drill> drills = new HashMap<>();
    Set<GameProgress> readable = Collections.newSetFromMap(new IdentityHashMap<>());
    for (PlayedGame played : games) {
      drills.put(played.drill().key(), played.drill());
      readable.add(played.game());
    }
    for (SessionProgress session : sessions) {
      for (PlannedBlock block : session.session().plan().blocks()) {
        Drill drill = drills.get(block.drill());
        if (drill != null) {
          read(
              drill,
              lanes(block).stream()
                  .map(lane -> LaneClock.entered(session, lane, readable))
                  .toList());
        }
      }
    }
    roleSeconds = changeSeconds();
  }

  static RecordedPaces of(List<PlayedGame> games, List<SessionProgress> sessions) {
    return new RecordedPaces(games, sessions);
  }

  private static List<List<PlannedGame>> lanes(PlannedBlock block) {
    Map<CourtLane, List<PlannedGame>> lanes = new LinkedHashMap<>();
    block.games().stream()
        .sorted(Comparator.comparingInt(PlannedGame::turn))
        .forEach(game -> lanes.computeIfAbsent(game.place(), lane -> new ArrayList<>()).add(game));
    return List.copyOf(lanes.values());
  }

  private void read(Drill drill, List<List<Optional<LaneClock.Entered>>> lanes) {
    Map<Integer, Long> lastEnds = lastEnds(lanes);
    lanes.forEach(games -> add(drill, LaneClock.of(games, lastEnds)));
  }

  /** When the last lane ended each turn, where every lane's end is known. */
  private static Map<Integer, Long> lastEnds(List<List<Optional<LaneClock.Entered>>> lanes) {
    Map<Integer, Long> ends = new HashMap<>();
    int turns = lanes.stream().mapToInt(List::size).max().orElse(0);
    for (int at = 0; at < turns; at++) {
      int turn = at;
      List<Optional<LaneClock.Entered>> games =
          lanes.stream().filter(lane -> lane.size() > turn).map(lane -> lane.get(turn)).toList();
      List<Long> known =
          games.stream().flatMap(Optional::stream).flatMap(RecordedPaces::end).toList();
      if (known.size() == games.size()) {
        int number = games.get(0).orElseThrow().progress().game().turn();
        ends.put(number, Collections.max(known));
      }
    }
    return ends;
  }

  private static Stream<Long> end(LaneClock.Entered game) {
    return game.endMillis().stream();
  }

  private void add(Drill drill, LaneClock clock) {
    tapped.computeIfAbsent(drill.key(), key -> new ArrayList<>()).addAll(clock.tapped());
    results.computeIfAbsent(drill.key(), key -> new ArrayList<>()).addAll(clock.results());
    changes.computeIfAbsent(drill, key -> new ArrayList<>()).addAll(clock.changes());
  }

  @Override
  public RallyPace of(Drill drill, DrillForm.Scored game) {
    RallyPace first = DrillPaces.FIRST_IDEAS.of(drill, game);
    List<RallySpan> spans = new ArrayList<>(tapped.getOrDefault(drill.key(), List.of()));
    for (RallySpan result : results.getOrDefault(drill.key(), List.of())) {
      double played = result.seconds() - roleSeconds;
      if (played >= LaneClock.SHORTEST_SECONDS * result.rallies()) {
        spans.add(new RallySpan(result.rallies(), played));
      }
    }
    return after(first, spans);
  }

  /**
   * The paces after taps of single rallies alone, with the usual change of roles.
   *
   * @return the paces
   */
  public DrillPaces ofTapsAlone() {
    return (drill, game) ->
        after(DrillPaces.FIRST_IDEAS.of(drill, game), tapped.getOrDefault(drill.key(), List.of()));
  }

  private static RallyPace after(RallyPace first, List<RallySpan> spans) {
    RallyPace pace = first;
    for (RallySpan span : RallySpan.steady(spans, first.rallyLogSd())) {
      pace = pace.afterGame(span.rallies(), span.seconds());
    }
    return pace;
  }

  @Override
  public double roleSeconds() {
    return roleSeconds;
  }

  /**
   * What lies between two games beyond the usual wait and rally, drawn towards the usual change.
   */
  private double changeSeconds() {
    List<Double> beyond = new ArrayList<>();
    changes.forEach(
        (drill, gaps) -> {
          RallyPace first = DrillPaces.FIRST_IDEAS.of(drill, drill.scored().orElseThrow());
          double rally = after(first, tapped.getOrDefault(drill.key(), List.of())).meanSeconds();
          gaps.forEach(gap -> beyond.add(gap - rally));
        });
    double usual = DrillPaces.FIRST_IDEAS.roleSeconds();
    double sum = usual * USUAL_CHANGES;
    for (double each : steady(beyond)) {
      sum += each;
    }
    double mean = sum / (USUAL_CHANGES + beyond.size());
    return Math.max(0, Math.min(LONGEST_CHANGE_SECONDS, mean));
  }

  private static List<Double> steady(List<Double> seconds) {
    if (seconds.isEmpty()) {
      return seconds;
    }
    double middle = RallySpan.median(seconds);
    double deviation =
        RallySpan.median(seconds.stream().map(each -> Math.abs(each - middle)).toList());
    double fence =
        RallySpan.FENCES * Math.max(LEAST_SPREAD_SECONDS, deviation * RallySpan.NORMAL_PER_MAD);
    return seconds.stream()
        .map(each -> Math.max(middle - fence, Math.min(middle + fence, each)))
        .toList();
  }
}
