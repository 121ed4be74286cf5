package rallywright.engine.skill;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Rows of a file under {@code published/}, without the heading. */
final class PublishedRows {
  private PublishedRows() {}

  static List<String[]> of(String path) throws Exception {
    try (InputStream in = PublishedRows.class.getResourceAsStream("/published/" + path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.split(",", -1))
          .toList();
    }
  }
}
