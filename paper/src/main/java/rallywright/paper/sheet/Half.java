package rallywright.paper.sheet;

import java.util.List;
import java.util.Locale;

/**
 * One half of a sheet, left or right of the fold.
 *
 * @param blocks its blocks from the top
 * @param topMm the space above the first block in millimetres
 * @param gapMm the space above each further block in millimetres
 */
public record Half(List<BlockView> blocks, double topMm, double gapMm) {

  /** Copies the list. */
  public Half {
    blocks = List.copyOf(blocks);
  }

  /**
   * Whether a block is the first one.
   *
   * @param block a block of this half
   * @return true for the first
   */
  public boolean startsWith(BlockView block) {
    return !blocks.isEmpty() && blocks.get(0).equals(block);
  }

  /**
   * The space above a block as a style.
   *
   * @param block a block of this half
   * @return for example "margin-top: 3.20mm"
   */
  public String gapStyle(BlockView block) {
    return String.format(Locale.ROOT, "margin-top: %.2fmm", startsWith(block) ? topMm : gapMm);
  }
}
