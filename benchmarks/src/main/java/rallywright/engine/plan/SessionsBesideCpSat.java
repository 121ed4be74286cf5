package rallywright.engine.plan;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Plans random sessions beside the proven optimum and prints a page of results. */
public final class SessionsBesideCpSat {

  private static final double SECONDS_ALLOWED = 60;

  private SessionsBesideCpSat() {}

  /**
   * Prints the page.
   *
   * @param arguments how many cases of 12 drills and how many of 40
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    OracleCase.of(12, 0, SECONDS_ALLOWED);
    series(out, 12, Integer.parseInt(arguments[0]), 0.01);
    series(out, 40, Integer.parseInt(arguments[1]), 0.02);
  }

  private static void series(PrintStream out, int drills, int count, double within) {
    List<OracleCase> cases = new ArrayList<>();
    out.printf(Locale.ROOT, "%n## %d random sessions, %d drills each%n%n", count, drills);
    out.println(
        "| seed | search | seconds | CP-SAT | seconds | proven | gap, % | own bound, % above |");
    out.println("| ---: | ---: | ---: | ---: | ---: | --- | ---: | ---: |");
    for (int seed = 1; seed <= count; seed++) {
      OracleCase each = OracleCase.of(drills, seed, SECONDS_ALLOWED);
      cases.add(each);
      out.printf(
          Locale.ROOT,
          "| %d | %.4f | %.2f | %.4f | %.2f | %s | %.2f | %.1f |%n",
          seed,
          each.found(),
          each.seconds(),
          each.oracle().score(),
          each.oracle().seconds(),
          each.oracle().proven() ? "yes" : "no",
          100 * each.gap(),
          100 * (each.relaxed() / each.oracle().score() - 1));
    }
    long near = cases.stream().filter(each -> each.gap() <= within).count();
    long proven = cases.stream().filter(each -> each.oracle().proven()).count();
    out.printf(
        Locale.ROOT,
        "%nWithin %.0f %% of the oracle's best: %d of %d; proven optima: %d.%n",
        100 * within,
        near,
        cases.size(),
        proven);
  }
}
