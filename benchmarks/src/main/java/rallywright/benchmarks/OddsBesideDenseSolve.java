package rallywright.benchmarks;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Side;
import rallywright.engine.score.WinBy;

/**
 * The exact odds beside a dense linear solve of the same chain: win chance and mean number of
 * rallies, the median time of several runs after a warm-up, and the largest difference.
 */
public final class OddsBesideDenseSolve {

  /** Runs that count, and as many before them that do not. */
  private static final int MANY_RUNS = 201;

  /** Chains with fewer states than this are solved densely in a few milliseconds. */
  private static final int FEW_STATES = 300;

  /** The dense solve takes seconds a run for the long games. */
  private static final int RUNS_OF_LONG_SOLVES = 3;

  private OddsBesideDenseSolve() {}

  /**
   * Prints the table.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    RallyChances chances = RallyChances.ofServe(Probability.of(0.45), Probability.of(0.40));
    System.out.println("| format | states | odds, ms | dense, ms | times | difference |");
    System.out.println("| --- | ---: | ---: | ---: | ---: | ---: |");
    formats().forEach((name, format) -> row(name, format, chances));
  }

  private static Map<String, GameFormat> formats() {
    Map<String, GameFormat> formats = new LinkedHashMap<>();
    formats.put("drill game to 5, every rally", GameFormat.DRILL_GAME);
    formats.put("half-court game to 5, server scores", GameFormat.HALF_COURT_GAME);
    formats.put("singles to 11, win by 2, server scores", GameFormat.SINGLES_TO_11);
    formats.put("doubles to 11, win by 2, two servers", GameFormat.DOUBLES_TO_11);
    formats.put(
        "doubles to 15, win by 2, two servers",
        GameFormat.DOUBLES_TO_11.withGoal(Goal.firstTo(15).withWinBy(WinBy.TWO)));
    formats.put("doubles to 21, win by 2, rally scoring 2025", GameFormat.DOUBLES_RALLY_2025_TO_21);
    return formats;
  }

  private static void row(String name, GameFormat format, RallyChances chances) {
    Supplier<double[]> odds =
        () -> {
          GameOdds game = GameOdds.of(format, chances);
          return new double[] {game.winChance(Side.A), game.rallies().mean()};
        };
    LiteralGame literal = new LiteralGame(format);
    Supplier<double[]> dense = () -> literal.solve(chances);
    double difference = 0;
    double[] exact = odds.get();
    double[] reference = dense.get();
    for (int i = 0; i < exact.length; i++) {
      difference = Math.max(difference, Math.abs(exact[i] - reference[i]));
    }
    double fast = milliseconds(odds, MANY_RUNS);
    double slow =
        milliseconds(dense, literal.states() < FEW_STATES ? MANY_RUNS : RUNS_OF_LONG_SOLVES);
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %.4f | %.3f | %.0f | %.1e |%n",
        name,
        literal.states(),
        fast,
        slow,
        slow / fast,
        difference);
  }

  private static double milliseconds(Supplier<double[]> work, int runs) {
    double kept = 0;
    for (int i = 0; i < runs; i++) {
      kept += work.get()[0];
    }
    double[] times = new double[runs];
    for (int i = 0; i < runs; i++) {
      long start = System.nanoTime();
      kept += work.get()[0];
      times[i] = (System.nanoTime() - start) / 1e6;
    }
    if (Double.isNaN(kept)) {
      throw new IllegalStateException("The chances are not numbers.");
    }
    Arrays.sort(times);
    return times[runs / 2];
  }
}
