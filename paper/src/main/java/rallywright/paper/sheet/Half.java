package rallywright.paper.sheet;

import java.util.List;

/**
 * One half of a sheet, left or right of the fold.
 *
 * @param blocks its blocks from the top
 * @param gapMm the space above each block in millimetres
 */
public record Half(List<BlockView> blocks, double gapMm) {

  /** Copies the list. */
  public Half {
    blocks = List.copyOf(blocks);
  }

  /**
   * The space above each block as a style.
   *
   * @return for example "margin-top: 3.20mm"
   */
  public String gapStyle() {
    return String.format(java.util.Locale.ROOT, "margin-top: %.2fmm", gapMm);
  }
}
