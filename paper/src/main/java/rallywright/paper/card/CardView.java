package rallywright.paper.card;

import java.util.List;

/**
 * The card as its template writes it.
 *
 * @param title the shot
 * @param drill the drill, or an empty text
 * @param player for whom
 * @param advice where to aim and how often it comes off
 * @param svg the drawing
 * @param marks what goes where
 * @param expect what to expect, a sentence each
 * @param small assumptions and cautions, a sentence each
 */
public record CardView(
    String title,
    String drill,
    String player,
    String advice,
    String svg,
    List<MarkLine> marks,
    List<String> expect,
    List<String> small) {

  /**
   * One mark.
   *
   * @param name what it is, for example "Cone A"
   * @param where it goes
   */
  public record MarkLine(String name, String where) {}

  /** Copies the lists. */
  public CardView {
    marks = List.copyOf(marks);
    expect = List.copyOf(expect);
    small = List.copyOf(small);
  }
}
