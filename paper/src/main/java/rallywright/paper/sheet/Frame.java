package rallywright.paper.sheet;

import java.util.Locale;

/**
 * The measures of a page, in millimetres.
 *
 * @param pageWidthMm the page's width, laid across
 * @param pageHeightMm the page's height
 */
public record Frame(double pageWidthMm, double pageHeightMm) {

  /** The white edge that every printer can keep. */
  public static final double EDGE_MM = 8;

  /** The white strip on each side of the fold. */
  public static final double FOLD_MM = 7;

  /**
   * The width of one half between its margins.
   *
   * @return millimetres
   */
  public double halfWidthMm() {
    return pageWidthMm / 2 - EDGE_MM - FOLD_MM;
  }

  /**
   * The height of one half between its margins.
   *
   * @return millimetres
   */
  public double halfHeightMm() {
    return pageHeightMm - 2 * EDGE_MM;
  }

  /**
   * The measures as a stylesheet.
   *
   * @return rules for the page and its halves
   */
  public String style() {
    return String.format(
        Locale.ROOT,
        "@page { size: %.1fmm %.1fmm; margin: %.1fmm; }%n"
            + ".leaf { height: %.2fmm; }%n"
            + ".half { width: %.2fmm; }%n",
        pageWidthMm,
        pageHeightMm,
        EDGE_MM,
        halfHeightMm() - 0.5,
        halfWidthMm());
  }

  /**
   * The measures of one endless half, for finding out how high its parts are.
   *
   * @return rules for the page and its half
   */
  public String measuringStyle() {
    return String.format(
        Locale.ROOT,
        "@page { size: %.1fmm 20000mm; margin: %.1fmm; }%n.measured { width: %.2fmm; }%n",
        pageWidthMm,
        EDGE_MM,
        halfWidthMm());
  }
}
