package rallywright.store.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * One table as it is written for a spreadsheet (RFC 4180). A text that a spreadsheet would take for
 * a formula is given an apostrophe in front; numbers are written as they are.
 */
public final class SheetTable {

  private final StringBuilder text = new StringBuilder();
  private final CSVPrinter printer;
  private final int columns;

  private SheetTable(String... headings) {
    columns = headings.length;
    try {
      printer = new CSVPrinter(text, CSVFormat.RFC4180);
      printer.printRecord((Object[]) headings);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /**
   * A table without rows.
   *
   * @param headings what stands above the columns, units included
   * @return the table to add rows to
   */
  public static SheetTable with(String... headings) {
    return new SheetTable(headings);
  }

  /**
   * Adds a row.
   *
   * @param cells one for each heading; nothing is written for null
   * @throws IllegalArgumentException if there are fewer or more cells than headings
   */
  public void row(@Nullable Object... cells) {
    if (cells.length != columns) {
      throw new IllegalArgumentException(
          "A row of %d cells does not fit under %d headings.".formatted(cells.length, columns));
    }
    try {
      for (Object cell : cells) {
        printer.print(
            cell instanceof Number ? cell : SheetText.guarded(Objects.toString(cell, "")));
      }
      printer.println();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** The whole table. */
  public String text() {
    return text.toString();
  }
}
