package rallywright.web.players;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A pasted list or CSV file of players: a line each, columns parted by comma, semicolon or tab. The
 * first line may name the columns; otherwise they are name, level, hand, limits, notes.
 */
public final class PlayerSheet {

  /** The most lines taken at once. */
  static final int MOST_LINES = 500;

  static final List<String> COLUMNS = List.of("name", "level", "hand", "limits", "notes", "junior");

  private PlayerSheet() {}

  /**
   * One filled line.
   *
   * @param line its number, from 1
   * @param columns the names of the sheet's columns
   * @param cells what stands in them
   */
  record Row(long line, List<String> columns, List<String> cells) {

    /** What stands in a column, empty where there is none. */
    String cell(String column) {
      int at = columns.indexOf(column);
      return at < 0 || at >= cells.size() ? "" : cells.get(at).strip();
    }
  }

  /**
   * Something that is wrong in the sheet.
   *
   * @param line the line, from 1
   * @param column the column's name, or an empty text for the whole line
   * @param sentence what was seen, what is allowed, what to try
   */
  public record Problem(long line, String column, String sentence) {}

  /**
   * A sheet taken apart.
   *
   * @param rows the filled lines
   * @param problems what is wrong with its form
   */
  record Cut(List<Row> rows, List<Problem> problems) {}

  static Cut cut(String text) {
    List<Row> rows = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    String clean = text.startsWith("\uFEFF") ? text.substring(1) : text;
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(delimiter(clean))
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true)
            .get();
    long line = 0;
    try (CSVParser parser = CSVParser.parse(new StringReader(clean), format)) {
      List<String> columns = COLUMNS;
      for (CSVRecord record : parser) {
        line = parser.getCurrentLineNumber();
        List<String> cells = record.toList();
        if (record.getRecordNumber() == 1 && isHeader(cells)) {
          columns = header(cells, problems);
        } else if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
          rows.add(new Row(line, columns, cells));
          checkWidth(line, cells, columns, problems);
        }
      }
    } catch (IOException | UncheckedIOException broken) {
      problems.add(
          new Problem(
              line + 1,
              "",
              "This line could not be read. Maybe a quotation mark is opened and never closed."));
    }
    checkLength(rows, problems);
    return new Cut(rows, problems);
  }

  private static void checkLength(List<Row> rows, List<Problem> problems) {
    if (rows.size() > MOST_LINES) {
      problems.add(
          new Problem(
              MOST_LINES + 1L,
              "",
              "There are %d players; at most %d are taken at once. Send them in parts."
                  .formatted(rows.size(), MOST_LINES)));
    }
  }

  private static void checkWidth(
      long line, List<String> cells, List<String> columns, List<Problem> problems) {
    if (cells.size() > columns.size()) {
      problems.add(
          new Problem(
              line,
              "",
              ("This line has %d columns; %d are known. Maybe a text with a comma needs quotation"
                      + " marks.")
                  .formatted(cells.size(), columns.size())));
    }
  }

  private static char delimiter(String text) {
    String first = text.strip().lines().findFirst().orElse("");
    if (first.contains("\t")) {
      return '\t';
    }
    return first.contains(";") && !first.contains(",") ? ';' : ',';
  }

  private static boolean isHeader(List<String> cells) {
    return cells.stream().anyMatch(cell -> word(cell).equals("name"));
  }

  private static List<String> header(List<String> cells, List<Problem> problems) {
    List<String> columns = cells.stream().map(PlayerSheet::word).toList();
    for (String column : columns) {
      if (!COLUMNS.contains(column)) {
        problems.add(
            new Problem(
                1,
                column,
                "The column \"%s\" is not known; the columns are %s. Take it out or rename it."
                    .formatted(column, String.join(", ", COLUMNS))));
      }
    }
    return columns;
  }

  private static String word(String cell) {
    return cell.strip().toLowerCase(Locale.ROOT);
  }
}
