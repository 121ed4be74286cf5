package rallywright.engine.plan;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/** How long a change by hand takes: a fresh editor, one round more, and the whole check. */
public final class PlanEditTimes {

  private static final int RUNS = 41;

  private PlanEditTimes() {}

  /**
   * Prints a table.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println("| drills | players | courts | plan, CPU ms | change, CPU ms | slowest, CPU ms |");
    out.println("| ---: | ---: | ---: | ---: | ---: | ---: |");
    for (int drills : new int[] {12, 40}) {
      for (long seed : new long[] {2, 3, 7, 11, 12}) {
        row(out, drills, RandomProblems.of(drills, seed));
      }
    }
  }

  private static void row(PrintStream out, int drills, PlanProblem problem) {
    long start = cpuNanos();
    PlanAnswer answer = SessionPlanner.plan(problem);
    double planning = (cpuNanos() - start) / 1e6;
    if (answer instanceof PlanAnswer.Planned planned) {
      PlannedBlock last = planned.plan().blocks().get(planned.plan().blocks().size() - 1);
      double[] times = new double[RUNS];
      for (int run = 0; run < RUNS; run++) {
        long before = cpuNanos();
        PlanEdit edit = PlanEditor.of(problem).moreGames(planned.plan(), last.id());
        times[run] = (cpuNanos() - before) / 1e6;
        if (edit instanceof PlanEdit.Refused refused) {
          throw new IllegalStateException(refused.sentence());
        }
      }
      Arrays.sort(times);
      out.printf(
          Locale.ROOT,
          "| %d | %d | %d | %.0f | %.1f | %.1f |%n",
          drills,
          problem.attendees().size(),
          problem.wish().courts(),
          planning,
          times[RUNS / 2],
          times[RUNS - 1]);
    }
  }

  /** Processor time of this thread: the clock on the wall also counts whatever else runs. */
  private static long cpuNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
