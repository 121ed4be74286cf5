package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import rallywright.engine.pace.LaneTimes;
import rallywright.engine.pace.SessionTime;
import rallywright.engine.pace.Timing;
import rallywright.engine.plan.PlannedBlock.End;

/**
 * The time of a block: getting to the place and hearing the rule, then stint after stint; a stint
 * lasts until its last lane is done, or until a horn.
 */
final class BlockClock {

  /** From one block to the next: walk, hear the rule, first ball. Assumption of this project. */
  static final double BLOCK_SECONDS = 60;

  /** To change opponents between two stints. Assumption of this project. */
  static final double STINT_SECONDS = 20;

  /**
   * To swap roles between two games of a stint, before any was timed. Assumption of this project.
   */
  static final double ROLE_SECONDS = 10;

  /** From this many lanes on a horn ends the games. */
  static final int LANES_FOR_HORN = 3;

  /**
   * The horn sounds when a lane is done with this chance; games cut off are kept as they stand.
   * Assumption of this project.
   */
  static final double DONE_BY_HORN = 2.0 / 3;

  private static final double HORN_STEP_SECONDS = 30;

  private BlockClock() {}

  static End endFor(int lanes, SessionWish wish) {
    return switch (wish.requests().ends()) {
      case USUAL -> lanes >= LANES_FOR_HORN ? End.BY_CLOCK : End.LAST_LANE;
      case BY_CLOCK -> End.BY_CLOCK;
      case LAST_LANE -> End.LAST_LANE;
    };
  }

  /**
   * One stint.
   *
   * @param seconds its time, swaps of roles included, change of opponents not
   * @param pacedSeconds the part that the drill's pace stretches
   * @param playedSeconds how long a lane is at play on average
   */
  record StintTime(Timing seconds, double pacedSeconds, double playedSeconds) {}

  /**
   * The time of one stint.
   *
   * @param lanes the games of each lane, one after the other
   * @param end how the stint ends
   * @param roleSeconds what a swap of roles takes
   */
  static StintTime stint(List<List<Timing>> lanes, End end, double roleSeconds) {
    List<Timing> sums = new ArrayList<>();
    for (List<Timing> games : lanes) {
      sums.add(games.stream().reduce(Timing.NOTHING, Timing::then));
    }
    double swaps = roleSeconds * (lanes.get(0).size() - 1);
    LaneTimes times = LaneTimes.of(sums);
    double mean = sums.stream().mapToDouble(Timing::mean).average().orElseThrow();
    if (end == End.BY_CLOCK) {
      double steps = Math.ceil(times.slowestQuantile(DONE_BY_HORN) / HORN_STEP_SECONDS);
      double horn = steps * HORN_STEP_SECONDS;
      return new StintTime(Timing.fixed(horn + swaps), 0, Math.min(mean, horn));
    }
    Timing last = times.last();
    return new StintTime(last.then(Timing.fixed(swaps)), last.mean(), mean);
  }

  /** The block as the session's time sees it. */
  static SessionTime.Part part(PlannedBlock block, PlanContext context) {
    if (block.games().isEmpty()) {
      return fixed(block);
    }
    double paced = 0;
    Timing sum = Timing.fixed(BLOCK_SECONDS);
    List<List<PlannedGame>> stints = context.stints(block);
    for (List<PlannedGame> stint : stints) {
      StintTime time = timeOf(block, stint, context);
      sum = sum.then(time.seconds());
      paced += time.pacedSeconds();
    }
    sum = sum.then(Timing.fixed(STINT_SECONDS * (stints.size() - 1)));
    double cv = context.lengths().pace(context.drill(block.drill())).drillCv();
    return new SessionTime.Part(block.drill(), sum, paced, cv);
  }

  /** A horn sounds after the usual time of the drill; the last lane depends on who plays. */
  private static StintTime timeOf(
      PlannedBlock block, List<PlannedGame> stint, PlanContext context) {
    UsualStint usual = context.usualStint(context.lineOf(block));
    boolean horn = block.end() == End.BY_CLOCK && usual.end() == End.BY_CLOCK;
    return horn ? usual.time() : context.stintTime(block, stint);
  }

  /**
   * A stretch of a session on the plan's clock.
   *
   * @param fromMinute from the session's start
   * @param untilMinute after it
   */
  record Span(double fromMinute, double untilMinute) {}

  /** When a block begins if every block before it takes its mean time. */
  static double startMinute(List<PlannedBlock> blocks, int position) {
    return blocks.subList(0, position).stream().mapToDouble(block -> block.time().mean()).sum();
  }

  /** When each stint of a block is played, on the plan's clock. */
  static List<Span> spans(PlannedBlock block, double startMinute, PlanContext context) {
    List<Span> spans = new ArrayList<>();
    double from = startMinute + BLOCK_SECONDS / 60;
    for (List<PlannedGame> stint : context.stints(block)) {
      double until = from + timeOf(block, stint, context).seconds().mean() / 60;
      spans.add(new Span(from, until));
      from = until + STINT_SECONDS / 60;
    }
    return spans;
  }

  private static SessionTime.Part fixed(PlannedBlock block) {
    Timing time = Timing.fixed(60 * block.time().mean());
    return new SessionTime.Part(block.drill(), time, 0, 0);
  }

  /** The block's time in minutes, by itself. */
  static BlockTime time(PlannedBlock block, PlanContext context) {
    Timing alone = part(block, context).alone();
    return new BlockTime(alone.mean() / 60, alone.sd() / 60);
  }
}
