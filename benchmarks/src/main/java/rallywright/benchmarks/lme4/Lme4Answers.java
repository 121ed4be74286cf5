package rallywright.benchmarks.lme4;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What the R script wrote: lines of model, name, index and value. */
final class Lme4Answers {
  private final List<String[]> lines = new ArrayList<>();

  private Lme4Answers(List<String> text) {
    text.stream().skip(1).forEach(line -> lines.add(line.split(",")));
  }

  static Lme4Answers read(Path file) throws IOException {
    return new Lme4Answers(Files.readAllLines(file));
  }

  String version() {
    return lines.stream()
        .filter(line -> line[1].equals("version"))
        .map(line -> line[3])
        .findFirst()
        .orElse("unknown");
  }

  Answer answer(String model) {
    return new Answer(
        values(model, "sd").get(0),
        values(model, "logLik").get(0),
        values(model, "fixed"),
        values(model, "mode"));
  }

  /** The median processor time of a whole fit. */
  double seconds(String model) {
    return median(values(model, "seconds"));
  }

  /** The median time of a whole fit by the clock. */
  double wallSeconds(String model) {
    return median(values(model, "wall"));
  }

  /** The median processor time of the search alone, the matrices being ready. */
  double searchingSeconds(String model) {
    return median(values(model, "searching"));
  }

  static double median(List<Double> values) {
    double[] sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private List<Double> values(String model, String name) {
    return lines.stream()
        .filter(line -> line[0].equals(model) && line[1].equals(name))
        .map(line -> Double.valueOf(line[3]))
        .toList();
  }
}
