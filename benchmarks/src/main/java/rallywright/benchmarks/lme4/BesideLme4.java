package rallywright.benchmarks.lme4;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import rallywright.benchmarks.Page;
import rallywright.engine.skill.Game;
import rallywright.engine.skill.YardstickResult;

/**
 * The skill model beside lme4. Arguments: {@code draw GAMES} writes invented games; {@code once
 * GAMES} fits them once; {@code compare GAMES FOLDER PAGE COLD COLD} fits what lme4 fitted and
 * writes the tables, the last two being the times of the cold processes in seconds.
 */
public final class BesideLme4 {
  private static final int PLAYERS = 200;
  private static final int RALLIES = 20_000;
  private static final int SEED = 200;
  private static final int WARM_UPS = 100;
  private static final int RUNS = 15;

  private BesideLme4() {}

  /**
   * Draws, fits or compares.
   *
   * @param arguments see above
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] arguments) throws IOException {
    Path games = Path.of(arguments[1]);
    switch (arguments[0]) {
      case "draw" -> Files.writeString(games, drawn());
      case "once" -> System.out.printf(Locale.ROOT, "engine sd %.8f%n", read(games).fit().sd());
      case "compare" -> {
        Path folder = Path.of(arguments[2]);
        String text = new Comparison(read(games), folder).text(arguments[4], arguments[5]);
        System.out.println(text);
        Page.at(Path.of(arguments[3])).withResults(text);
      }
      default ->
          throw new IllegalArgumentException(
              "The work (" + arguments[0] + ") must be draw, once or compare.");
    }
  }

  private static String drawn() {
    StringBuilder text = new StringBuilder("a,b,won\n");
    BradleyTerry.drawn(PLAYERS, RALLIES, new SplittableRandom(SEED))
        .forEach(row -> text.append(row).append('\n'));
    return text.toString();
  }

  private static BradleyTerry read(Path file) throws IOException {
    List<Game> games = new ArrayList<>();
    for (int[] row : numbers(file)) {
      games.add(BradleyTerry.game(row[0], row[1], row[2]));
    }
    return new BradleyTerry(PLAYERS, games);
  }

  private static List<int[]> numbers(Path file) throws IOException {
    return Files.readAllLines(file).stream()
        .skip(1)
        .map(line -> Arrays.stream(line.split(",")).mapToInt(Integer::parseInt).toArray())
        .toList();
  }

  /** Both sides, warm. */
  private record Comparison(BradleyTerry games, Path folder) {

    String text(String coldLme4, String coldEngine) throws IOException {
      Lme4Answers lme4 = Lme4Answers.read(folder.resolve("lme4.csv"));
      List<YardstickResult> rows = new ArrayList<>();
      for (int[] row : numbers(folder.resolve("cbpp.csv"))) {
        rows.add(Herds.result(row[0], row[1], row[2], row[3]));
      }
      Herds herds = new Herds(rows);
      StringBuilder text = new StringBuilder();
      line(
          text,
          "lme4 %s. Cold processes, one fit of the games each: lme4 as it comes %s s,"
              + " the engine %s s.",
          lme4.version(),
          coldLme4,
          coldEngine);
      line(text, "");
      line(
          text,
          "| model | fitted by | SD | log likelihood | largest difference | CPU ms | wall ms |");
      line(text, "| --- | --- | ---: | ---: | ---: | ---: | ---: |");
      double engine = rows(text, "games", lme4, games::fit);
      rows(text, "herds", lme4, herds::fit);
      line(text, "");
      line(
          text,
          "Games, lme4's processor time over the engine's: %.1f as lme4 comes"
              + " (%.1f its search alone), %.1f tight (%.1f its search alone).",
          lme4.seconds("games-plain") / engine,
          lme4.searchingSeconds("games-plain") / engine,
          lme4.seconds("games-tight") / engine,
          lme4.searchingSeconds("games-tight") / engine);
      return text.toString();
    }

    /** Three rows of a model; returns the engine's processor time in seconds. */
    private static double rows(
        StringBuilder text, String model, Lme4Answers lme4, Supplier<Answer> fit) {
      ThreadMXBean threads = ManagementFactory.getThreadMXBean();
      List<Double> seconds = new ArrayList<>();
      List<Double> wall = new ArrayList<>();
      Answer own = fit.get();
      for (int run = 0; run < WARM_UPS + RUNS; run++) {
        long start = System.nanoTime();
        long processor = threads.getCurrentThreadCpuTime();
        own = fit.get();
        if (run >= WARM_UPS) {
          seconds.add((threads.getCurrentThreadCpuTime() - processor) / 1e9);
          wall.add((System.nanoTime() - start) / 1e9);
        }
      }
      double engine = Lme4Answers.median(seconds);
      row(text, model + " | engine", own, 0, timesOf(engine, Lme4Answers.median(wall)));
      for (String setting : List.of("tight", "plain")) {
        Answer other = lme4.answer(model + "-" + setting);
        row(
            text,
            model + " | lme4, " + setting,
            other,
            own.differenceFrom(other),
            timesOf(lme4.seconds(model + "-" + setting), lme4.wallSeconds(model + "-" + setting)));
      }
      return engine;
    }

    private static void row(
        StringBuilder text, String head, Answer answer, double difference, String times) {
      line(
          text,
          "| %s | %.7f | %.6f | %s | %s |",
          head,
          answer.sd(),
          answer.logLikelihood(),
          difference == 0 ? "" : String.format(Locale.ROOT, "%.1e", difference),
          times);
    }

    private static String timesOf(double processor, double wall) {
      return String.format(Locale.ROOT, "%.1f | %.1f", 1000 * processor, 1000 * wall);
    }

    private static void line(StringBuilder text, String format, Object... values) {
      text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
  }
}
