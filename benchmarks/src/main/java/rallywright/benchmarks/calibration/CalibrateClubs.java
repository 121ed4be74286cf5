package rallywright.benchmarks.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rallywright.benchmarks.Page;
import rallywright.engine.calibration.ClubCheck;
import rallywright.engine.calibration.Coverage;
import rallywright.engine.calibration.Kind;
import rallywright.engine.calibration.RankHistogram;

/**
 * Draws clubs, reads them, and writes the tables of the calibration page and its two figures.
 * Arguments: number of clubs, seed, the page, the folder of the figures.
 */
public final class CalibrateClubs {
  static final List<Double> SHARES = List.of(0.5, 0.8, 0.9, 0.95);

  /** Two in a hundred beyond chance is what the project allows itself. */
  static final double TOLERANCE = 0.02;

  static final int BINS = 20;

  private static final int PROGRESS = 100;

  private CalibrateClubs() {}

  /**
   * Runs the calibration.
   *
   * @param arguments number of clubs, seed, page, folder of the figures
   * @throws IOException if the page or a figure cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    int clubs = number(arguments[0], "number of clubs", 2);
    int seed = number(arguments[1], "seed", 0);
    long start = System.nanoTime();
    List<ClubCheck> checks = checks(clubs, seed);
    double seconds = (System.nanoTime() - start) / 1e9;
    Map<Kind, RankHistogram> ranks = new EnumMap<>(Kind.class);
    Map<Kind, List<Coverage>> coverages = new EnumMap<>(Kind.class);
    for (Kind kind : Kind.values()) {
      ranks.put(kind, RankHistogram.of(checks, kind, BINS));
      coverages.put(kind, SHARES.stream().map(share -> Coverage.of(checks, kind, share)).toList());
    }
    ResultTables tables = new ResultTables(checks, coverages, Verdict.of(ranks));
    String text = tables.text(seed, seconds);
    System.out.println(text);
    Page.at(Path.of(arguments[2])).withResults(text);
    Path figures = Path.of(arguments[3]);
    Files.createDirectories(figures);
    Files.writeString(figures.resolve("coverage.svg"), new CoverageFigure(coverages).svg());
    Files.writeString(figures.resolve("ranks.svg"), new RankFigure(ranks, clubs).svg());
  }

  private static int number(String text, String what, int least) {
    try {
      int number = Integer.parseInt(text);
      if (number >= least) {
        return number;
      }
    } catch (NumberFormatException notANumber) {
      // Told below, as a number that is too small is.
    }
    throw new IllegalArgumentException(
        "The %s (%s) must be a whole number of %d or more. Maybe 1000."
            .formatted(what, text, least));
  }

  /** Each club has its own source of chance, so that the order of the work does not matter. */
  private static List<ClubCheck> checks(int clubs, int seed) {
    SplittableRandom root = new SplittableRandom(seed);
    List<SplittableRandom> sources = Stream.generate(root::split).limit(clubs).toList();
    AtomicInteger done = new AtomicInteger();
    return IntStream.range(0, clubs)
        .parallel()
        .mapToObj(
            club -> {
              ClubCheck check = ClubCheck.of(sources.get(club));
              if (done.incrementAndGet() % PROGRESS == 0) {
                System.err.println(done + " of " + clubs + " clubs");
              }
              return check;
            })
        .toList();
  }
}
