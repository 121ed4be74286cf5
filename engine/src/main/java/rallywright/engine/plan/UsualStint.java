package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rallywright.engine.pace.Timing;
import rallywright.engine.plan.BlockClock.StintTime;
import rallywright.engine.plan.PlannedBlock.End;

/**
 * What a stint of a drill is like on average over those present: its time, and how many are on
 * court. A horn sounds after this time, whoever happens to meet.
 *
 * @param time the time of one stint
 * @param end how it ends
 * @param lanes how many games run side by side
 * @param onCourt how many play at once
 * @param games the games of one lane, one after the other; empty where nothing is scored
 */
record UsualStint(StintTime time, End end, int lanes, int onCourt, List<Timing> games) {

  /** So many stints show who usually meets. */
  private static final int STINTS = 4;

  static UsualStint of(DrillLine line, PlanContext context) {
    Shape shape = context.shape(line);
    if (!line.isScored()) {
      double seconds = 60 * line.drill().minutes().orElseThrow();
      StintTime time = new StintTime(Timing.fixed(seconds), 0, seconds);
      return new UsualStint(time, End.BY_CLOCK, shape.groups(), shape.onCourt(), List.of());
    }
    int lanes = Math.max(1, new Rotation(context, Rotation.Care.QUICK).groupsPossible(line));
    List<Timing> games = Collections.nCopies(shape.turns(), game(line, context));
    return of(games, lanes, lanes * shape.size(), context);
  }

  private static UsualStint of(List<Timing> games, int lanes, int onCourt, PlanContext context) {
    End end = BlockClock.endFor(lanes, context.wish());
    StintTime time =
        BlockClock.stint(Collections.nCopies(lanes, games), end, context.lengths().roleSeconds());
    return new UsualStint(time, end, lanes, onCourt, games);
  }

  /** The same for fewer people who divide like this. */
  UsualStint forFewer(Shape shape, PlanContext context) {
    int groups = Math.min(lanes, shape.groups());
    if (games.isEmpty() || groups == 0 || groups == lanes) {
      return new UsualStint(time, end, groups, groups * shape.size(), games);
    }
    return of(games, groups, groups * shape.size(), context);
  }

  /** The time of a game, the mean over those who would meet in the first stints of the drill. */
  private static Timing game(DrillLine line, PlanContext context) {
    Rotation rotation = new Rotation(context, Rotation.Care.QUICK);
    List<Timing> times = new ArrayList<>();
    for (int stint = 0; stint < STINTS; stint++) {
      for (List<Duel> lane : rotation.next(line).lanes()) {
        lane.forEach(duel -> times.add(context.usualTiming(line, duel)));
      }
    }
    double games = Math.max(1, times.size());
    double mean = times.stream().mapToDouble(Timing::mean).sum() / games;
    double third = times.stream().mapToDouble(Timing::third).sum() / games;
    double square =
        times.stream().mapToDouble(each -> each.variance() + each.mean() * each.mean()).sum();
    return new Timing(mean, Math.max(0, square / games - mean * mean), third);
  }
}
