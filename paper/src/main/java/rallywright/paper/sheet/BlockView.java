package rallywright.paper.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * One part of the sheet between two rules: all warm-ups, a drill with everything that is played of
 * it in a row, a yardstick or a break.
 *
 * @param id the part's id in the markup
 * @param clock from when to when, for example "18:10–18:22"
 * @param title what it is, for example "Drop game"
 * @param subtitle the direction or the length, for example "straight"
 * @param rule the rule in one line, or empty
 * @param note what differs from the usual scoring and feed, or empty
 * @param roles the roles, none where there is nothing to tell apart
 * @param courts the drawings, none for a warm-up or a break
 * @param stretches what is played, a stretch for each direction; none without games
 * @param counts the counts of a yardstick, by rows
 * @param warmUps the warm-ups
 */
public record BlockView(
    String id,
    String clock,
    String title,
    String subtitle,
    String rule,
    String note,
    List<RoleLine> roles,
    List<CourtPicture> courts,
    List<GameStretch> stretches,
    List<List<CountCell>> counts,
    List<WarmUpLine> warmUps) {

  /** From so many rows on, two drawings stand one above the other. */
  private static final int ROWS_BESIDE_TWO_DRAWINGS = 4;

  /** Copies the lists. */
  public BlockView {
    roles = List.copyOf(roles);
    courts = List.copyOf(courts);
    stretches = List.copyOf(stretches);
    counts = counts.stream().map(List::copyOf).toList();
    warmUps = List.copyOf(warmUps);
  }

  /**
   * A part without drawings and games: a line or two.
   *
   * @param id the part's id in the markup
   * @param clock from when to when
   * @param title what it is
   * @param subtitle its length and what to do
   * @return the part
   */
  public static BlockView plain(String id, String clock, String title, String subtitle) {
    return new BlockView(
        id, clock, title, subtitle, "", "", List.of(), List.of(), List.of(), List.of(), List.of());
  }

  /**
   * How the part is laid out.
   *
   * @return the names of styles, for example "one"
   */
  public String form() {
    if (courts.isEmpty()) {
      boolean thin = stretches.isEmpty() && counts.isEmpty() && warmUps.isEmpty();
      return thin ? "plain thin" : "plain";
    }
    if (courts.size() == 1) {
      return "one";
    }
    return rows() >= ROWS_BESIDE_TWO_DRAWINGS ? "stack" : "two";
  }

  /**
   * This part in pieces that are not too high for a page.
   *
   * @param mostRows the most rows of games or counts in one piece
   * @return this part alone, or the first piece and its continuations
   */
  public List<BlockView> inPartsOf(int mostRows) {
    if (Math.max(rows(), counts.size()) <= mostRows) {
      return List.of(this);
    }
    List<BlockView> parts = new ArrayList<>();
    for (List<GameStretch> some : piecesOf(mostRows)) {
      parts.add(part(parts.size(), some, List.of()));
    }
    for (int from = 0; from < counts.size(); from += mostRows) {
      int to = Math.min(counts.size(), from + mostRows);
      parts.add(part(parts.size(), List.of(), counts.subList(from, to)));
    }
    return parts;
  }

  private int rows() {
    return stretches.stream().mapToInt(stretch -> stretch.rows().size()).sum();
  }

  private List<List<GameStretch>> piecesOf(int mostRows) {
    List<List<GameStretch>> pieces = new ArrayList<>();
    List<GameStretch> piece = new ArrayList<>();
    int used = 0;
    for (GameStretch stretch : stretches) {
      for (GameStretch some : stretch.inPartsOf(mostRows)) {
        if (used + some.rows().size() > mostRows) {
          pieces.add(piece);
          piece = new ArrayList<>();
          used = 0;
        }
        piece.add(some);
        used += some.rows().size();
      }
    }
    if (!piece.isEmpty()) {
      pieces.add(piece);
    }
    return pieces;
  }

  private BlockView part(int place, List<GameStretch> some, List<List<CountCell>> someCounts) {
    boolean first = place == 0;
    return new BlockView(
        first ? id : id + "-" + place,
        clock,
        first ? title : title + ", continued",
        subtitle,
        first ? rule : "",
        first ? note : "",
        roles,
        first ? courts : List.of(),
        some,
        someCounts,
        warmUps);
  }
}
