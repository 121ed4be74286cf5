package rallywright.paper.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * One block of the sheet.
 *
 * @param id the block's id in the markup
 * @param clock from when to when, for example "18:10–18:22"
 * @param title what it is, for example "Drop game"
 * @param subtitle the direction or the length, for example "straight"
 * @param rule the rule in one line, or empty
 * @param scoring the scoring in words, or empty
 * @param roles the roles, none where there is nothing to tell apart
 * @param courts the drawings, none for a warm-up or a break
 * @param games the games in the order of play, by rows
 * @param counts the counts of a yardstick, by rows
 * @param sitting who sits out, or empty
 * @param cues short cues
 */
public record BlockView(
    String id,
    String clock,
    String title,
    String subtitle,
    String rule,
    String scoring,
    List<RoleLine> roles,
    List<CourtPicture> courts,
    List<List<GameCell>> games,
    List<List<CountCell>> counts,
    String sitting,
    List<String> cues) {

  /** Copies the lists. */
  public BlockView {
    roles = List.copyOf(roles);
    courts = List.copyOf(courts);
    games = games.stream().map(List::copyOf).toList();
    counts = counts.stream().map(List::copyOf).toList();
    cues = List.copyOf(cues);
  }

  /**
   * This block in parts that are not too high for a page.
   *
   * @param mostRows the most rows of games or counts in one part
   * @return this block alone, or the first part and its continuations
   */
  public List<BlockView> inPartsOf(int mostRows) {
    int rows = Math.max(games.size(), counts.size());
    if (rows <= mostRows) {
      return List.of(this);
    }
    List<BlockView> parts = new ArrayList<>();
    for (int from = 0; from < rows; from += mostRows) {
      parts.add(part(from, Math.min(rows, from + mostRows), from + mostRows >= rows));
    }
    return parts;
  }

  private BlockView part(int from, int to, boolean last) {
    boolean first = from == 0;
    return new BlockView(
        first ? id : id + "-" + from,
        clock,
        first ? title : title + ", continued",
        subtitle,
        first ? rule : "",
        first ? scoring : "",
        roles,
        first ? courts : List.of(),
        games.isEmpty() ? games : games.subList(from, to),
        counts.isEmpty() ? counts : counts.subList(from, to),
        last ? sitting : "",
        first ? cues : List.of());
  }
}
