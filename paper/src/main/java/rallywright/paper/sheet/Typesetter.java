package rallywright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the place of each block, so that nothing crosses the fold and nothing is cut off.
 *
 * <p>One page is filled as evenly as possible; where one page is too small, pages follow one
 * another, filled from the top left.
 */
public final class Typesetter {

  /** The id of the sheet's head in the measured page. */
  public static final String HEAD = "head";

  /** The id of the short head of later pages in the measured page. */
  public static final String SHORT_HEAD = "short-head";

  /** The id of what stands at the foot of the last half in the measured page. */
  public static final String FOOT = "foot";

  /** The id of one line for notes in the measured page. */
  public static final String NOTE_LINE = "note-line";

  private static final double LEAST_GAP_MM = 0.8;
  private static final double LARGEST_GAP_MM = 6.5;

  /** Kept free: the heavier rule at the top of the right half, and rounding to printer's dots. */
  private static final double RESERVE_MM = 1.0;

  private static final int MOST_NOTE_LINES = 8;

  private final double room;
  private final Map<String, Double> heights;
  private final List<BlockView> blocks;

  /**
   * A typesetter for one sheet.
   *
   * @param frame the measures of the page
   * @param heights the height of each part in millimetres, by its id
   * @param blocks the blocks in order
   */
  public Typesetter(Frame frame, Map<String, Double> heights, List<BlockView> blocks) {
    this.room = frame.halfHeightMm() - RESERVE_MM;
    this.heights = Map.copyOf(heights);
    this.blocks = List.copyOf(blocks);
  }

  /**
   * All blocks on one page, the two halves as even as can be.
   *
   * @return the page, or empty if it is too small
   */
  public Optional<Leaf> onePage() {
    int best = -1;
    double bestFill = room;
    for (int cut = 0; cut <= blocks.size(); cut++) {
      double left = height(HEAD) + filled(blocks.subList(0, cut));
      double right = filled(blocks.subList(cut, blocks.size())) + height(FOOT);
      double fill = Math.max(left, right);
      if (fill <= bestFill) {
        best = cut;
        bestFill = fill;
      }
    }
    if (best < 0) {
      return Optional.empty();
    }
    return Optional.of(
        leaf(1, blocks.subList(0, best), blocks.subList(best, blocks.size()), height(FOOT)));
  }

  /**
   * As many pages as it takes.
   *
   * @return the pages in order
   */
  public List<Leaf> manyPages() {
    List<List<BlockView>> halves = new ArrayList<>();
    List<BlockView> half = new ArrayList<>();
    double used = height(HEAD);
    for (BlockView block : blocks) {
      double next = height(block.id()) + LEAST_GAP_MM;
      if (used + next > room && !half.isEmpty()) {
        halves.add(half);
        half = new ArrayList<>();
        used = halves.size() % 2 == 0 ? height(SHORT_HEAD) : 0;
      }
      half.add(block);
      used += next;
    }
    halves.add(half);
    if (halves.size() % 2 == 1 || used + height(FOOT) > room) {
      halves.add(List.of());
    }
    if (halves.size() % 2 == 1) {
      halves.add(List.of());
    }
    List<Leaf> leaves = new ArrayList<>();
    for (int place = 0; place < halves.size(); place += 2) {
      boolean last = place + 2 == halves.size();
      leaves.add(
          leaf(place / 2 + 1, halves.get(place), halves.get(place + 1), last ? height(FOOT) : 0));
    }
    return leaves;
  }

  private Leaf leaf(int number, List<BlockView> left, List<BlockView> right, double foot) {
    double head = height(number == 1 ? HEAD : SHORT_HEAD);
    double rightFree = room - filled(right) - foot;
    double rightGap = gap(right, rightFree);
    double unused = rightFree - (rightGap - LEAST_GAP_MM) * Math.max(0, right.size() - 1);
    int lines = foot > 0 ? (int) Math.min(MOST_NOTE_LINES, unused / height(NOTE_LINE)) : 0;
    return new Leaf(
        number,
        new Half(left, 0, gap(left, room - head - filled(left))),
        new Half(right, 0, rightGap),
        Math.max(0, lines));
  }

  private static double gap(List<BlockView> half, double freeMm) {
    double share = half.size() < 2 ? 0 : Math.max(0, freeMm) / (half.size() - 1);
    return Math.min(LARGEST_GAP_MM, LEAST_GAP_MM + share);
  }

  private double filled(List<BlockView> half) {
    double gaps = LEAST_GAP_MM * Math.max(0, half.size() - 1);
    return gaps + half.stream().mapToDouble(block -> height(block.id())).sum();
  }

  private double height(String id) {
    Double height = heights.get(id);
    if (height == null) {
      throw new IllegalStateException("The part \"" + id + "\" of the sheet was not measured.");
    }
    return height;
  }
}
