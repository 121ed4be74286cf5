package rallywright.benchmarks.calibration;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.DoubleStream;
import rallywright.engine.calibration.Answer;
import rallywright.engine.calibration.ClubCheck;
import rallywright.engine.calibration.Coverage;
import rallywright.engine.calibration.Kind;

/**
 * The tables of the page.
 *
 * @param checks the clubs
 * @param coverages of each kind, for each share
 * @param verdict on the ranks
 */
record ResultTables(List<ClubCheck> checks, Map<Kind, List<Coverage>> coverages, Verdict verdict) {

  String text(int seed, double seconds) {
    StringBuilder text = new StringBuilder();
    text.append(
        line(
            "%d clubs, seed %d, %.0f seconds. %d of %d coverages hold; the ranks of %d of %d kinds"
                + " are not told from flat ones.",
            checks.size(),
            seed,
            seconds,
            coverages.values().stream().flatMap(List::stream).filter(ResultTables::holds).count(),
            coverages.values().stream().mapToInt(List::size).sum(),
            verdict.flat().size(),
            verdict.chances().size()));
    text.append(line(""))
        .append(line("Truths in the interval, in per cent, ± one standard error:"));
    text.append(line(""))
        .append(line("| kind | answers | 50 %% | 80 %% | 90 %% | 95 %% | error | spread left |"));
    text.append(line("| --- | ---: | ---: | ---: | ---: | ---: | --- | ---: |"));
    for (Kind kind : Kind.values()) {
      text.append(row(kind));
    }
    text.append(line(""))
        .append(line("Ranks in %d bins against flat ones:", CalibrateClubs.BINS))
        .append(line(""))
        .append(line("| kind | chance of ranks as uneven as these | Holm at %.2f |", Verdict.LEVEL))
        .append(line("| --- | ---: | --- |"));
    verdict
        .chances()
        .forEach(
            (kind, chance) ->
                text.append(
                    line(
                        "| %s | %.3f | %s |",
                        kind.words(),
                        chance,
                        verdict.flat().contains(kind) ? "holds" : "**does not hold**")));
    return text.toString();
  }

  private static String line(String format, Object... values) {
    return String.format(Locale.ROOT, format, values) + "\n";
  }

  private String row(Kind kind) {
    StringBuilder row = new StringBuilder();
    List<Coverage> all = Objects.requireNonNull(coverages.get(kind));
    row.append(String.format(Locale.ROOT, "| %s | %,d |", kind.words(), all.get(0).answers()));
    for (Coverage each : all) {
      String cell =
          String.format(
              Locale.ROOT, "%.1f ± %.1f", 100 * each.covered(), 100 * each.standardError());
      row.append(holds(each) ? " " + cell + " |" : " **" + cell + "** |");
    }
    double mean = errors(kind).average().orElse(Double.NaN);
    double square = errors(kind).map(error -> error * error).average().orElse(Double.NaN);
    double sd = Math.sqrt(square - mean * mean);
    row.append(
        String.format(Locale.ROOT, " %.2f ± %.2f | %.0f %% |%n", mean, sd, 100 * spreadLeft(kind)));
    return row.toString();
  }

  private DoubleStream errors(Kind kind) {
    return checks.stream().flatMap(club -> club.of(kind).stream()).mapToDouble(Answer::error);
  }

  private static boolean holds(Coverage coverage) {
    return coverage.holdsWithin(CalibrateClubs.TOLERANCE);
  }

  /** The SD after the season as a share of the SD before it, in the mean over all answers. */
  private double spreadLeft(Kind kind) {
    return checks.stream()
        .flatMap(club -> club.of(kind).stream())
        .mapToDouble(ResultTables::left)
        .average()
        .orElse(Double.NaN);
  }

  private static double left(Answer answer) {
    return answer.estimate().sd() / answer.priorSd();
  }
}
