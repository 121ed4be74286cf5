package rallywright.acceptance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The long runs, one part after the other or those that are named; prints the tables of the page of
 * results. Started by {@code benchmarks/run-reliability}.
 */
public final class RunReliability {

  private static final long SEED = 20_261_130;
  private static final int KILLS = 200;
  private static final int SYNCS = 10_000;
  private static final int BROWSER_KILLS = 50;
  private static final int LOAD_SECONDS = 180;

  private RunReliability() {}

  private interface Part {
    String run(Path folder) throws Exception;
  }

  /** Runs the named parts: kills, syncs, room, browser, load; all of them without a name. */
  public static void main(String[] parts) throws Exception {
    List<String> named =
        parts.length == 0 ? List.of("load", "room", "browser", "kills", "syncs") : List.of(parts);
    try {
      for (String each : named) {
        String[] words = each.split("=", 2);
        int size = words.length > 1 ? Integer.parseInt(words[1]) : 0;
        report(words[0], part(words[0], size));
      }
    } finally {
      Browsers.endKept();
    }
  }

  private static Part part(String name, int size) {
    return switch (name) {
      case "kills" -> folder -> kills(folder, size > 0 ? size : KILLS);
      case "syncs" -> folder -> syncs(folder, size > 0 ? size : SYNCS);
      case "room" -> RunReliability::room;
      case "browser" -> folder -> browser(folder, size > 0 ? size : BROWSER_KILLS);
      case "load" -> folder -> load(folder, size > 0 ? size : LOAD_SECONDS);
      default ->
          throw new IllegalArgumentException(
              "The part \""
                  + name
                  + "\" is not known; there are kills, syncs, room, browser, load.");
    };
  }

  private static void report(String name, Part part) throws Exception {
    Path folder = Files.createTempDirectory("reliability");
    String before = FullHouse.load();
    Instant start = Instant.now();
    try {
      String table = part.run(folder);
      long minutes = Math.round(Duration.between(start, Instant.now()).toSeconds() / 60.0);
      System.out.printf(
          "%n## %s%n%n%s%n%nLoad average %s before and %s after, %d minutes.%n%n",
          name, table, before, FullHouse.load(), minutes);
    } finally {
      remove(folder);
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    }
  }

  private static String kills(Path folder, int kills) throws Exception {
    KilledServer.Result result =
        KilledServer.run(folder, kills, SEED, soFar -> System.out.println("so far: " + row(soFar)));
    return """
    | kills | entries made | in the store | acknowledged, looked up at kills | lost | doubled |
    | ---: | ---: | ---: | ---: | ---: | ---: |
    """
        + row(result);
  }

  /**
   * Rows are printed after every session or kill too: a run that is cut off leaves the last one.
   */
  private static String row(KilledServer.Result result) {
    return "| %d | %d | %d | %d | %d | %d |"
        .formatted(
            result.kills(),
            result.made(),
            result.stored(),
            result.acknowledgedAtKills(),
            result.lost(),
            result.doubled());
  }

  private static String syncs(Path folder, int syncs) throws Exception {
    SyncsOverBadNetwork.Result result =
        SyncsOverBadNetwork.run(
            folder, syncs, SEED, soFar -> System.out.println("so far: " + row(soFar)));
    String faults =
        result.faults().entrySet().stream()
            .map(each -> "| %s | %d |".formatted(each.getKey().words(), each.getValue()))
            .collect(Collectors.joining("\n"));
    return """
    | messages with entries | sessions | entries | differing |
    | ---: | ---: | ---: | ---: |
    %s

    | what happened to messages and looks | times |
    | --- | ---: |
    %s"""
        .formatted(row(result), faults);
  }

  private static String row(SyncsOverBadNetwork.Result result) {
    return "| %d | %d | %d | %d |"
        .formatted(result.messages(), result.sessions(), result.entries(), result.differing());
  }

  private static String room(Path folder) throws Exception {
    Path real = Files.createDirectory(folder.resolve("real"));
    Path limited = Files.createDirectory(folder.resolve("limited"));
    StringBuilder rows = new StringBuilder();
    if (FullDisk.mayMount(real)) {
      try (FullDisk disk = FullDisk.mounted(real)) {
        rows.append(row(disk, PhonesWithoutRoom.run(real, disk))).append('\n');
      }
    }
    Path aborted = Files.createDirectory(folder.resolve("aborted"));
    Path image = folder.resolve("aborted.img");
    if (ReadOnlyDisk.isPossible(image, aborted)) {
      try (ReadOnlyDisk disk = ReadOnlyDisk.mounted(image, aborted)) {
        rows.append(row(disk, PhonesWithoutRoom.run(aborted, disk))).append('\n');
      }
    }
    try (FullDisk disk = FullDisk.limited(limited)) {
      rows.append(row(disk, PhonesWithoutRoom.run(limited, disk)));
    }
    return """
    | room taken by | waiting on the phone | stored meanwhile | rallies | doubled | holds |
    | --- | ---: | ---: | ---: | ---: | --- |
    %s

    Started on a folder that may only be read: %s"""
        .formatted(rows, PhonesWithoutRoom.startedReadOnly(limited).err().strip());
  }

  private static String row(DiskTrouble disk, PhonesWithoutRoom.Result result) {
    return "| %s | %d | %d | %d | %d | %s |"
        .formatted(
            disk.words(),
            result.waiting(),
            result.storedMeanwhile(),
            result.rallies(),
            result.doubled(),
            result.holds() ? "yes" : "no");
  }

  private static String browser(Path folder, int kills) throws Exception {
    KilledBrowser.Result result =
        KilledBrowser.run(
            folder, kills, SEED, soFar -> System.out.println("so far: " + row(soFar)));
    return """
    | kills | entries shown before | lost | broken | the tap under the finger was kept |
    | ---: | ---: | ---: | ---: | ---: |
    """
        + row(result);
  }

  private static String row(KilledBrowser.Result result) {
    return "| %d | %d | %d | %d | %d |"
        .formatted(result.kills(), result.shown(), result.lost(), result.broken(), result.kept());
  }

  private static String load(Path folder, int seconds) throws Exception {
    FullHouse.Result result = FullHouse.run(folder, seconds);
    int asked = result.writes().sorted().size() + result.looks().sorted().size() + result.draws();
    return """
    | | number | p50, ms | p99, ms | longest, ms |
    | --- | ---: | ---: | ---: | ---: |
    | bare commit of the database | %s |
    | write: a rally until it is acknowledged | %s |
    | the same from the moment it was due | %s |
    | look: what others did | %s |
    | board: from the tap until it is drawn | %s |

    %s"""
        .formatted(
            result.limit().row(),
            result.writes().row(),
            result.late().row(),
            result.looks().row(),
            result.boards().row(),
            inWords(result, asked));
  }

  private static String inWords(FullHouse.Result result, int asked) {
    FullHouse.Crowd crowd = result.crowd();
    return String.format(
        Locale.ROOT,
        "Boards were drawn %d times; failures %d. Without pauses eight phones store %.0f rallies a"
            + " second, %.2f of the %.0f commits a second of the bare database; each takes %.1f ms"
            + " of the server's processor time. p99 of a write is %.1f times that of a bare commit."
            + " In the measured time the server used %.1f s of processor time, %.1f ms for each of"
            + " %d answers: %s. Load average %s.",
        result.draws(),
        result.failures(),
        crowd.aSecond(),
        crowd.aSecond() / result.limit().aSecond(),
        result.limit().aSecond(),
        crowd.processorMs(),
        result.writes().at(0.99) / result.limit().at(0.99),
        result.used().total() / 1000,
        result.used().total() / asked,
        asked,
        result.used().most(),
        result.load());
  }
}
