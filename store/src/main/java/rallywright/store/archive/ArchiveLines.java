package rallywright.store.archive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import rallywright.store.json.ClubJson;
import rallywright.store.json.WrongJson;

/** The lines of the files in an archive, or the reasons why they cannot be read. */
final class ArchiveLines {

  /** The largest file inside an archive that is read: far above any club, far below the memory. */
  private static final int MOST_BYTES = 256 << 20;

  private final List<ImportProblem> problems = new ArrayList<>();
  private final Map<String, List<String>> lines = new HashMap<>();

  private ArchiveLines() {}

  /** Reads the files of an archive. */
  static ArchiveLines of(Path archive) {
    ArchiveLines read = new ArchiveLines();
    String name = String.valueOf(archive.getFileName());
    try (ZipFile zip = new ZipFile(archive.toFile(), StandardCharsets.UTF_8)) {
      read.refuseStrangers(zip);
      if (read.isOfKnownVersion(zip)) {
        for (String file : ArchiveFiles.DATA) {
          read.read(zip, file);
        }
      }
    } catch (IOException problem) {
      read.problems.add(
          new ImportProblem(
              name,
              0,
              "",
              "This is not a whole export ("
                  + problem.getMessage()
                  + "). Maybe it was cut short in copying, or another file was meant."));
    }
    return read;
  }

  List<ImportProblem> problems() {
    return problems;
  }

  /** The lines of one file; a line that cannot be read is an empty text. */
  List<String> of(String file) {
    return lines.getOrDefault(file, List.of());
  }

  private void refuseStrangers(ZipFile zip) {
    Set<String> known = new HashSet<>(ArchiveFiles.DATA);
    known.add(ArchiveFiles.ABOUT);
    known.add(ArchiveFiles.READ_ME);
    zip.stream()
        .map(ZipEntry::getName)
        .filter(name -> !known.contains(name) && !name.startsWith(ArchiveFiles.TABLES))
        .filter(name -> !name.equals("data/"))
        .forEach(
            name ->
                problems.add(
                    new ImportProblem(
                        name,
                        0,
                        "",
                        "This file does not belong to an export. Maybe a newer Rallywright wrote"
                            + " it; update this one.")));
  }

  private boolean isOfKnownVersion(ZipFile zip) throws IOException {
    read(zip, ArchiveFiles.ABOUT);
    List<String> about = of(ArchiveFiles.ABOUT);
    if (about.isEmpty()) {
      return false;
    }
    try {
      String of = ClubJson.readVersioned(about.get(0), fields -> fields.text("of"));
      if (of.equals("rallywright")) {
        return true;
      }
      problems.add(
          new ImportProblem(
              ArchiveFiles.ABOUT,
              1,
              "of",
              "This is an export of \"" + of + "\"; allowed:" + " rallywright."));
    } catch (WrongJson problem) {
      problems.add(
          new ImportProblem(
              ArchiveFiles.ABOUT, 1, problem.field(), String.valueOf(problem.getMessage())));
    }
    return false;
  }

  private void read(ZipFile zip, String file) throws IOException {
    ZipEntry entry = zip.getEntry(file);
    if (entry == null && ArchiveFiles.NEWER.contains(file)) {
      return;
    }
    if (entry == null) {
      problems.add(
          new ImportProblem(
              file,
              0,
              "",
              "This file is missing, so this is not a whole export of Rallywright. Maybe another"
                  + " file was meant."));
      return;
    }
    byte[] bytes;
    try (var in = zip.getInputStream(entry)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    }
    if (bytes.length > MOST_BYTES) {
      problems.add(
          new ImportProblem(
              file, 0, "", "This file is larger than " + MOST_BYTES + " bytes and is not read."));
      return;
    }
    List<String> texts = new ArrayList<>();
    int from = 0;
    for (int at = 0; at <= bytes.length; at++) {
      boolean atEnd = at == bytes.length;
      if (atEnd ? from < at : bytes[at] == '\n') {
        texts.add(text(file, texts.size() + 1, ByteBuffer.wrap(bytes, from, at - from)));
        from = at + 1;
      }
    }
    lines.put(file, texts);
  }

  private String text(String file, int line, ByteBuffer bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(bytes).toString().strip();
    } catch (CharacterCodingException problem) {
      problems.add(
          new ImportProblem(
              file,
              line,
              "",
              "This line is not UTF-8 text. Maybe it was saved in another coding."));
      return "";
    }
  }
}
