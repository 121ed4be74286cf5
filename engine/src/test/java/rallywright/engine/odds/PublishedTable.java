package rallywright.engine.odds;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import rallywright.engine.quantity.Probability;

/** A table of expected numbers; its first lines, after a hash, hold source, tool and tolerance. */
public final class PublishedTable {

  private PublishedTable() {}

  /** One line of a table. */
  public record Row(Map<String, String> cells) {

    public String text(String column) {
      return Objects.requireNonNull(cells.get(column), column);
    }

    boolean has(String column) {
      return !text(column).isEmpty();
    }

    int whole(String column) {
      return Integer.parseInt(text(column));
    }

    /** A decimal or a fraction, rounded once. */
    public double number(String column) {
      String[] parts = text(column).split("/", -1);
      if (parts.length == 1) {
        return new BigDecimal(parts[0]).doubleValue();
      }
      return new BigDecimal(parts[0])
          .divide(new BigDecimal(parts[1]), MathContext.DECIMAL128)
          .doubleValue();
    }

    Probability chance(String column) {
      return Probability.of(number(column));
    }

    /** Half a unit of the last digit given, and a little for rounding. */
    double lastDigit(String column) {
      int scale = new BigDecimal(text(column)).scale();
      return 0.501 * Math.pow(10, -scale);
    }
  }

  public static List<Row> read(String path) {
    String full = "/published/" + path;
    try (InputStream in = PublishedTable.class.getResourceAsStream(full)) {
      String text =
          new String(Objects.requireNonNull(in, full).readAllBytes(), StandardCharsets.UTF_8);
      List<String> lines = text.lines().filter(line -> !line.startsWith("#")).toList();
      String[] columns = lines.get(0).split(",", -1);
      List<Row> rows = new ArrayList<>();
      for (String line : lines.subList(1, lines.size())) {
        String[] cells = line.split(",", -1);
        Map<String, String> row = new HashMap<>();
        for (int i = 0; i < columns.length; i++) {
          row.put(columns[i], cells[i]);
        }
        rows.add(new Row(row));
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
