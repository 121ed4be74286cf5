package rallywright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A page of which the part between two marks is written by a command and the rest by people.
 *
 * @param path where it lies
 */
public record Page(Path path) {
  private static final String BEGIN = "<!-- results begin -->\n";
  private static final String END = "<!-- results end -->";

  /** The page that lies there. */
  public static Page at(Path path) {
    return new Page(path);
  }

  /** Puts results between the marks, in place of those that were there. */
  public void withResults(String results) throws IOException {
    String page = Files.readString(path);
    int begin = page.indexOf(BEGIN);
    int end = page.indexOf(END);
    if (!(begin >= 0 && end > begin)) {
      throw new IOException(
          "The page "
              + path
              + " must hold the marks of its results, but has none. Maybe it is another page.");
    }
    Files.writeString(
        path, page.substring(0, begin + BEGIN.length()) + results + page.substring(end));
  }
}
