package rallywright.paper.sheet;

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
}
