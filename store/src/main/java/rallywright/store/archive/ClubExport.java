package rallywright.store.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import rallywright.store.ClubContents;
import rallywright.store.ClubStore;
import rallywright.store.StoreProblem;
import rallywright.store.json.ClubJson;
import rallywright.store.json.DayJson;
import rallywright.store.json.EventJson;

/**
 * Writes everything that a club holds as one ZIP file: JSON, one object a line, complete and made
 * to be read again; and the same as tables (CSV) for a spreadsheet. Keys and secret settings stay
 * out. The same club gives the same bytes.
 */
public final class ClubExport {

  /** The earliest time that a ZIP file can hold, so that equal clubs give equal files. */
  private static final FileTime NO_TIME = FileTime.fromMillis(315_619_200_000L);

  private ClubExport() {}

  /**
   * Writes an export into a new file.
   *
   * @param store the club
   * @param target the new file; its folder must exist
   * @throws StoreProblem if the file exists already or cannot be written
   */
  public static void write(ClubStore store, Path target) {
    ClubContents contents = store.contents();
    boolean begun = false;
    try (OutputStream out =
        Files.newOutputStream(target, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      begun = true;
      write(contents, out);
    } catch (FileAlreadyExistsException problem) {
      throw new StoreProblem(
          "The file "
              + target
              + " is there already and is not overwritten. Choose another name, for example with"
              + " the date in it.",
          problem);
    } catch (IOException | UncheckedIOException problem) {
      if (begun) {
        removeUnfinished(target);
      }
      throw new StoreProblem(
          "The export "
              + target
              + " could not be written: "
              + problem.getMessage()
              + ". Maybe its folder does not exist or the disk is full.",
          problem);
    }
  }

  /**
   * Writes an export.
   *
   * @param contents everything the club holds
   * @param out where to; it is left open
   * @throws IOException if it cannot be written
   */
  public static void write(ClubContents contents, OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    put(zip, ArchiveFiles.READ_ME, readMe());
    put(zip, ArchiveFiles.ABOUT, "{\"v\":" + ArchiveFiles.VERSION + ",\"of\":\"rallywright\"}\n");
    for (Map.Entry<String, List<String>> file : data(contents).entrySet()) {
      put(zip, file.getKey(), joined(file.getValue()));
    }
    for (Map.Entry<String, String> table : CsvTables.of(contents).entrySet()) {
      put(zip, ArchiveFiles.TABLES + table.getKey(), table.getValue());
    }
    zip.finish();
  }

  private static Map<String, List<String>> data(ClubContents contents) {
    Map<String, List<String>> files = new LinkedHashMap<>();
    files.put(ArchiveFiles.PLAYERS, lines(contents.players(), ClubJson::write));
    files.put(ArchiveFiles.GROUPS, lines(contents.groups(), ClubJson::write));
    files.put(ArchiveFiles.VENUES, lines(contents.venues(), ClubJson::write));
    files.put(ArchiveFiles.SESSIONS, lines(contents.sessions(), ClubJson::write));
    files.put(
        ArchiveFiles.TEMPLATES,
        lines(
            contents.templates().entrySet(),
            each -> ClubJson.writeTemplate(each.getKey(), each.getValue())));
    files.put(ArchiveFiles.EVENTS, lines(contents.events(), EventJson::write));
    files.put(
        ArchiveFiles.SETTINGS,
        lines(
            contents.settings().entrySet(),
            each -> ClubJson.writePair("name", each.getKey(), "content", each.getValue())));
    files.put(
        ArchiveFiles.DRILLS,
        lines(
            contents.drills().entrySet(),
            each -> ClubJson.writePair("key", each.getKey().value(), "yaml", each.getValue())));
    files.put(
        ArchiveFiles.FORGOTTEN,
        lines(
            contents.forgotten(),
            mark -> ClubJson.writePair("kind", mark.kind(), "id", mark.id())));
    files.put(
        ArchiveFiles.MERGED,
        lines(
            contents.merged().entrySet(),
            each ->
                ClubJson.writePair("id", each.getKey().value(), "into", each.getValue().value())));
    files.put(ArchiveFiles.DAYS, lines(contents.days(), DayJson::write));
    return files;
  }

  private static <T> List<String> lines(
      java.util.Collection<T> values, Function<T, String> writing) {
    return values.stream().map(writing).toList();
  }

  private static String joined(List<String> lines) {
    return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
  }

  private static void put(ZipOutputStream zip, String name, String text) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setLastModifiedTime(NO_TIME);
    zip.putNextEntry(entry);
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  private static void removeUnfinished(Path target) {
    try {
      Files.deleteIfExists(target);
    } catch (IOException problem) {
      throw new StoreProblem(
          "The unfinished export " + target + " could not be removed. Delete it by hand.", problem);
    }
  }

  private static String readMe() {
    return """
        This is everything that a club of Rallywright holds, except keys and passwords.
        It holds people's data, with notes on health: keep it as you would keep those notes.

        data/    everything, one JSON object a line; "rallywright import" reads it again
        tables/  the same as tables (CSV, UTF-8) for a spreadsheet; they are not read again

        Times are milliseconds since 1970 (UTC), dates are year-month-day.
        """;
  }
}
