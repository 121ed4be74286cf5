package rallywright.paper.rotation;

import java.util.Locale;

/**
 * How large the names on a rotation sheet can be: as the cell allows, in points.
 *
 * @param columnMm the inner width of a column
 * @param rowMm the height of a row
 */
public record TypeSize(double columnMm, double rowMm) {

  /** Larger type than this looks shouted. */
  public static final double LARGEST_PT = 15;

  /** Smaller type than this is not printed; names are broken over lines instead. */
  public static final double SMALLEST_PT = 7.6;

  /** The usual width of a semi-bold letter, in parts of the type size (measured on names). */
  private static final double LETTER = 0.5;

  private static final double LINE_HEIGHT = 1.2;
  private static final double MM_PER_POINT = 25.4 / 72;

  /**
   * The size for a line of names.
   *
   * @param letters letters of the line
   * @param lines lines in the row, 1 or more
   * @return the size in points
   */
  public double points(int letters, int lines) {
    double byHeight = (rowMm - 1.6) / lines / LINE_HEIGHT / MM_PER_POINT;
    double byWidth = columnMm / Math.max(1, letters) / LETTER / MM_PER_POINT;
    double fit = Math.min(Math.min(byHeight, byWidth), LARGEST_PT);
    return Math.max(SMALLEST_PT, fit);
  }

  /**
   * The largest size at which words fill no more lines than the row has room for.
   *
   * @param letters letters of all names together
   * @return the size in points
   */
  public double pointsOfList(int letters) {
    for (int lines = 1; lines < 12; lines++) {
      double points = points((int) Math.ceil(1.15 * letters / lines), lines);
      double needed = lines * points * LINE_HEIGHT * MM_PER_POINT;
      double wide = 1.15 * letters / lines * LETTER * MM_PER_POINT * points;
      if (points > 9.5 && needed <= rowMm && wide <= columnMm + 1e-9) {
        return Math.min(points, 11.5);
      }
    }
    double area = columnMm * (rowMm - 1) / (1.25 * Math.max(1, letters) * LETTER * LINE_HEIGHT);
    return Math.min(9.5, Math.max(SMALLEST_PT, Math.sqrt(area) / MM_PER_POINT));
  }

  /**
   * A size as a style.
   *
   * @param points the size
   * @return for example "font-size: 11.2pt"
   */
  public static String style(double points) {
    return String.format(Locale.ROOT, "font-size: %.1fpt", points);
  }
}
