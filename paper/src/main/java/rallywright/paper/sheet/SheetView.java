package rallywright.paper.sheet;

import java.util.List;

/**
 * Everything that stands on a court sheet.
 *
 * @param name the session's name
 * @param when day and booked time
 * @param where the courts
 * @param players first names of those who take part
 * @param demo the sentence that says that all of it is invented, or empty
 * @param blocks the blocks in the order of play
 * @param phone the way to the phone page
 * @param usual what holds for every game unless its part says otherwise, or empty
 * @param cautions the usual cautions, a sentence each
 */
public record SheetView(
    String name,
    String when,
    String where,
    List<String> players,
    String demo,
    List<BlockView> blocks,
    PhoneView phone,
    String usual,
    List<String> cautions) {

  /** Copies the lists. */
  public SheetView {
    players = List.copyOf(players);
    blocks = List.copyOf(blocks);
    cautions = List.copyOf(cautions);
  }
}
