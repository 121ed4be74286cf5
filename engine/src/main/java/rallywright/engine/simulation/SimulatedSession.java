package rallywright.engine.simulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.session.Conditions;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.GameFormats;
import rallywright.engine.session.Session;

/** Plays a planned session from the truth and notes it as a coach would. */
public final class SimulatedSession {

  private static final String BY = "simulated";
  private static final double RALLY_BY_RALLY = 0.5;
  private static final double TIME_CALLED = 0.06;
  private static final int FEWEST_RALLIES = 4;

  private final Session session;
  private final ClubTruth truth;
  private final List<Drill> drills;
  private final List<Yardstick> yardsticks;
  private final RandomGenerator random;
  private final SeededIds ids;
  private final List<CourtEvent> events = new ArrayList<>();

  private SimulatedSession(Session session, ClubTruth truth, Trade trade, RandomGenerator random) {
    this.session = session;
    this.truth = truth;
    this.drills = trade.drills();
    this.yardsticks = trade.yardsticks();
    this.random = random;
    this.ids = SeededIds.of(random);
  }

  /**
   * What may stand in a plan.
   *
   * @param drills the drills
   * @param yardsticks the yardsticks
   */
  public record Trade(List<Drill> drills, List<Yardstick> yardsticks) {

    /** Keeps copies. */
    public Trade {
      drills = List.copyOf(drills);
      yardsticks = List.copyOf(yardsticks);
    }
  }

  /**
   * Plays a session.
   *
   * @param session the planned session; its players must have true skills
   * @param truth who is how good
   * @param trade the drills and yardsticks of the plan
   * @param startMillis when it begins, in milliseconds since 1970
   * @param random the seeded source of chance
   * @return the events in order of time: rallies of about half of the games, else final scores
   */
  public static List<CourtEvent> play(
      Session session, ClubTruth truth, Trade trade, long startMillis, RandomGenerator random) {
    SimulatedSession played = new SimulatedSession(session, truth, trade, random);
    played.run(startMillis);
    played.events.sort(Comparator.comparingLong(event -> event.stamp().atMillis()));
    return List.copyOf(played.events);
  }

  private void run(long startMillis) {
    long now = startMillis;
    events.add(new CourtEvent.ConditionsNoted(stamp(now), conditions()));
    for (PlannedBlock block : session.plan().blocks()) {
      events.add(new CourtEvent.BlockStarted(stamp(now), block.id()));
      now = after(block, now);
      events.add(new CourtEvent.BlockEnded(stamp(now), block.id()));
      now += millis(45 + 45 * random.nextDouble());
    }
    for (PlayerId player : session.plan().present()) {
      int rating = (int) Math.max(1, Math.min(10, Math.round(5 + 1.5 * random.nextGaussian())));
      now += 1000;
      events.add(new CourtEvent.EffortRated(stamp(now), player, rating));
    }
    events.add(new CourtEvent.SessionEnded(stamp(now + 1000)));
  }

  private long after(PlannedBlock block, long start) {
    Optional<Drill> drill =
        drills.stream().filter(each -> each.key().equals(block.drill())).findFirst();
    if (block.kind() == PlannedBlock.Kind.YARDSTICK) {
      return counted(block, start);
    }
    if (block.games().isEmpty() || drill.isEmpty() || drill.get().scored().isEmpty()) {
      return start + millis(60 * block.time().mean());
    }
    Map<Integer, List<PlannedGame>> turns = new TreeMap<>();
    block
        .games()
        .forEach(game -> turns.computeIfAbsent(game.turn(), t -> new ArrayList<>()).add(game));
    long now = start;
    for (List<PlannedGame> turn : turns.values()) {
      long end = now;
      for (PlannedGame game : turn) {
        end = Math.max(end, played(block, drill.get(), game, now));
      }
      now = end + millis(30);
    }
    return now;
  }

  private long played(PlannedBlock block, Drill drill, PlannedGame game, long start) {
    SimulatedGame whole =
        SimulatedGame.play(
            truth, drill, game, GameFormats.of(Optional.of(drill), block, game), random);
    double style = random.nextDouble();
    boolean cut = !whole.last().isOver() || style < TIME_CALLED;
    int most = whole.rallies().size();
    SimulatedGame seen =
        cut && most > FEWEST_RALLIES
            ? whole.first(FEWEST_RALLIES + random.nextInt(most - FEWEST_RALLIES))
            : whole;
    long end = start + millis(seen.seconds().get(seen.seconds().size() - 1));
    if (!seen.last().isOver() || style < TIME_CALLED + RALLY_BY_RALLY) {
      for (int i = 0; i < seen.rallies().size(); i++) {
        CourtEvent.Stamp at = stamp(start + millis(seen.seconds().get(i)));
        events.add(new CourtEvent.RallyPlayed(at, game.id(), seen.rallies().get(i)));
      }
      if (!seen.last().isOver()) {
        events.add(new CourtEvent.TimeCalled(stamp(end), game.id()));
      }
    } else {
      events.add(
          new CourtEvent.FinalScoreGiven(
              stamp(end), game.id(), seen.last().score(), CourtEvent.Finish.PLAYED_OUT));
    }
    return end;
  }

  private long counted(PlannedBlock block, long start) {
    Yardstick yardstick =
        yardsticks.stream()
            .filter(each -> each.key().equals(block.drill()))
            .findFirst()
            .orElseThrow();
    long now = start;
    for (PlayerId player : session.plan().present()) {
      int hits = 0;
      for (int ball = 0; ball < yardstick.balls(); ball++) {
        hits += random.nextDouble() < truth.chanceOfHit(player, yardstick) ? 1 : 0;
      }
      now += millis(20);
      events.add(
          new CourtEvent.YardstickCounted(stamp(now), block.id(), player, hits, yardstick.balls()));
    }
    return Math.max(now, start + millis(60 * block.time().mean()));
  }

  private Conditions conditions() {
    Conditions.Wind[] winds = Conditions.Wind.values();
    double celsius = Math.rint(19 + 4 * random.nextGaussian());
    return new Conditions(
        winds[random.nextInt(winds.length)],
        random.nextInt(5) == 0 ? Conditions.Sun.BLINDING : Conditions.Sun.NONE,
        OptionalDouble.of(Math.max(5, Math.min(35, celsius))),
        OptionalDouble.empty());
  }

  private CourtEvent.Stamp stamp(long atMillis) {
    return new CourtEvent.Stamp(new EventId(ids.next()), session.id(), atMillis, BY);
  }

  private static long millis(double seconds) {
    return Math.round(1000 * seconds);
  }
}
