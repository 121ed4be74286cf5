package rallywright.engine.plan;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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
   * @param arguments how many cases of 12 drills and how many of 40; then, if the solver need not
   *     run again, a page of results from which its answers are read
   * @throws IOException if that page cannot be read
   */
  public static void main(String[] arguments) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    List<String> page =
        arguments.length > 2 ? Files.readAllLines(Path.of(arguments[2])) : List.of();
    OracleCase.of(12, 0, SECONDS_ALLOWED);
    series(out, new Series(12, Integer.parseInt(arguments[0]), 0.01), page);
    series(out, new Series(40, Integer.parseInt(arguments[1]), 0.02), page);
  }

  private record Series(int drills, int count, double within) {

    OracleCase ofSeed(long seed, List<String> page) {
      return page.isEmpty()
          ? OracleCase.of(drills, seed, SECONDS_ALLOWED)
          : OracleCase.beside(drills, seed, stored(seed, page));
    }

    /** What the solver answered in an earlier run: columns 4 to 6 of the table of this series. */
    private CpSatOracle.Outcome stored(long seed, List<String> page) {
      boolean here = false;
      for (String line : page) {
        here = line.startsWith("## ") ? line.endsWith(" %d drills each".formatted(drills)) : here;
        if (here && line.startsWith("| %d |".formatted(seed))) {
          String[] cells = line.split("\\s*\\|\\s*", -1);
          double score = Double.parseDouble(cells[4]);
          return new CpSatOracle.Outcome(
              cells[6].equals("yes"), score, score, Double.parseDouble(cells[5]));
        }
      }
      throw new IllegalArgumentException(
          "The page has no session %d of %d drills. Maybe ask for fewer, or run the solver again."
              .formatted(seed, drills));
    }
  }

  private static void series(PrintStream out, Series series, List<String> page) {
    List<OracleCase> cases = new ArrayList<>();
    out.printf(
        Locale.ROOT,
        "%n## %d random sessions, %d drills each%n%n",
        series.count(),
        series.drills());
    out.println(
        "| seed | search | seconds | CP-SAT | seconds | proven | gap, % | own bound, % above |");
    out.println("| ---: | ---: | ---: | ---: | ---: | --- | ---: | ---: |");
    for (int seed = 1; seed <= series.count(); seed++) {
      OracleCase each = series.ofSeed(seed, page);
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
          Math.round(10_000 * each.gap()) / 100.0,
          100 * (each.relaxed() / each.oracle().score() - 1));
    }
    long near = cases.stream().filter(each -> each.gap() <= series.within()).count();
    long proven = cases.stream().filter(each -> each.oracle().proven()).count();
    out.printf(
        Locale.ROOT,
        "%nWithin %.0f %% of the oracle's best: %d of %d; proven optima: %d.%n",
        100 * series.within(),
        near,
        cases.size(),
        proven);
  }
}
