package rallywright.paper;

/**
 * A sheet of paper as it comes out of the printer, laid across and folded once in the middle.
 *
 * <p>Sources of the sizes: A4 is ISO 216, Letter is ANSI Y14.1 (both from memory).
 */
public enum PaperSize {
  /** 210 × 297 mm. */
  A4("A4", 297, 210),
  /** 8.5 × 11 in. */
  LETTER("Letter", 279.4, 215.9);

  private final String words;
  private final double longEdgeMm;
  private final double shortEdgeMm;

  PaperSize(String words, double longEdgeMm, double shortEdgeMm) {
    this.words = words;
    this.longEdgeMm = longEdgeMm;
    this.shortEdgeMm = shortEdgeMm;
  }

  /**
   * The trade's name of the size.
   *
   * @return for example "Letter"
   */
  public String words() {
    return words;
  }

  /**
   * The longer edge.
   *
   * @return its length in millimetres
   */
  public double longEdgeMm() {
    return longEdgeMm;
  }

  /**
   * The shorter edge.
   *
   * @return its length in millimetres
   */
  public double shortEdgeMm() {
    return shortEdgeMm;
  }
}
