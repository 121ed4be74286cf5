package rallywright.paper.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Games that follow one another in one direction, as rows of cells.
 *
 * @param label the direction with its times, or empty where the heading says it
 * @param lanes how many games stand side by side in a turn, 0 where each cell names its own turn
 *     and place
 * @param columns the places over the columns, none where each cell names its own
 * @param rows the games in the order of play
 * @param sitting who sits out, or empty
 */
public record GameStretch(
    String label, int lanes, List<String> columns, List<List<GameCell>> rows, String sitting) {

  /** Copies the lists. */
  public GameStretch {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * Nothing to be written down, only who sits out.
   *
   * @param sitting who sits out
   * @return the stretch
   */
  public static GameStretch sittingOnly(String sitting) {
    return new GameStretch("", 0, List.of(), List.of(), sitting);
  }

  /**
   * Whether a turn begins at a column, so that its number stands there.
   *
   * @param column the column, from 0
   * @return true for the first game of a turn
   */
  public boolean startsTurn(int column) {
    return lanes > 0 && column % lanes == 0;
  }

  /** This stretch in pieces of at most so many rows; who sits out stands at the last. */
  List<GameStretch> inPartsOf(int mostRows) {
    List<GameStretch> parts = new ArrayList<>();
    for (int from = 0; from < rows.size(); from += mostRows) {
      int to = Math.min(rows.size(), from + mostRows);
      parts.add(
          new GameStretch(
              label, lanes, columns, rows.subList(from, to), to == rows.size() ? sitting : ""));
    }
    return parts.isEmpty() ? List.of(this) : parts;
  }
}
