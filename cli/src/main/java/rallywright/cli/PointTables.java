package rallywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/** Prints one table of a point as CSV (RFC 4180): a line of names, then the rows. */
final class PointTables {

  private static final List<String> TABLES = List.of("stages", "worth", "derivatives", "breakdown");

  private PointTables() {}

  static void check(@Nullable String table) {
    if (table != null && !TABLES.contains(table)) {
      throw new WrongInput(
          "The table --csv (%s) must be one of %s. Maybe worth."
              .formatted(table, String.join(", ", TABLES)));
    }
  }

  static void print(PrintWriter out, String table, PointAnswer answer) {
    List<Map<String, Object>> rows =
        switch (table) {
          case "stages" -> answer.stages();
          case "worth" -> answer.worth();
          case "derivatives" -> answer.derivatives();
          default -> answer.lostRallies();
        };
    try {
      CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
      printer.printRecord(rows.get(0).keySet());
      for (Map<String, Object> row : rows) {
        printer.printRecord(row.values());
      }
      printer.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
