package rallywright.acceptance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Processor time of a process so far, by kind of thread, as the kernel counts it in {@code
 * /proc/PID/task} (proc(5): user and system time in ticks of a hundredth of a second).
 *
 * @param millis milliseconds by the name of the thread without its number
 */
record ProcessorTime(Map<String, Double> millis) {

  private static final double MILLIS_A_TICK = 10;
  private static final int MOST_NAMED = 6;

  /** Where user and system time stand behind the name, which ends with the last bracket. */
  private static final int USER = 11;

  ProcessorTime {
    millis = Map.copyOf(millis);
  }

  /** Of a running process. */
  static ProcessorTime of(long pid) throws IOException {
    Map<String, Double> all = new TreeMap<>();
    try (Stream<Path> threads = Files.list(Path.of("/proc/" + pid + "/task"))) {
      for (Path thread : threads.toList()) {
        String line = line(thread.resolve("stat"));
        if (!line.isEmpty()) {
          String name = line.substring(line.indexOf('(') + 1, line.lastIndexOf(')'));
          String[] fields = line.substring(line.lastIndexOf(')') + 2).split(" ", -1);
          double ticks = Double.parseDouble(fields[USER]) + Double.parseDouble(fields[USER + 1]);
          all.merge(name.replaceAll("[0-9#-]+", "").strip(), MILLIS_A_TICK * ticks, Double::sum);
        }
      }
    }
    return new ProcessorTime(all);
  }

  private static String line(Path stat) {
    try {
      return Files.readString(stat);
    } catch (IOException ended) {
      return "";
    }
  }

  /** What was used since an earlier look; threads that ended meanwhile are left out. */
  ProcessorTime since(ProcessorTime before) {
    Map<String, Double> used = new TreeMap<>();
    millis.forEach(
        (name, time) ->
            used.put(name, Math.max(0, time - before.millis().getOrDefault(name, 0.0))));
    return new ProcessorTime(used);
  }

  /** All threads together, in milliseconds. */
  double total() {
    return millis.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** The kinds of threads that used most, with their share. */
  String most() {
    double total = Math.max(1, total());
    List<Map.Entry<String, Double>> first =
        millis.entrySet().stream()
            .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
            .limit(MOST_NAMED)
            .toList();
    return first.stream()
        .map(each -> "%s %.0f %%".formatted(each.getKey(), 100 * each.getValue() / total))
        .collect(Collectors.joining(", "))
        .toLowerCase(Locale.ROOT);
  }
}
