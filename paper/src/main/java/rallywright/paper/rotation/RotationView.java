package rallywright.paper.rotation;

import java.util.List;

/**
 * A rotation sheet as it is printed.
 *
 * @param title what is played
 * @param when the day, or empty
 * @param demo the sentence that names invented people, or empty
 * @param courts the heads of the columns
 * @param seating whether anybody sits out in any round
 * @param pages the pages with their rounds
 * @param foot sentences below the table
 */
public record RotationView(
    String title,
    String when,
    String demo,
    List<String> courts,
    Seating seating,
    List<Page> pages,
    List<String> foot) {

  /** Copies the lists. */
  public RotationView {
    courts = List.copyOf(courts);
    pages = List.copyOf(pages);
    foot = List.copyOf(foot);
  }

  /** Whether there is a column for those who sit out. */
  public enum Seating {
    /** Everybody plays in each round. */
    ALL_PLAY,
    /** Somebody sits out in some round. */
    SOME_SIT
  }

  /**
   * Whether there is a column for those who sit out.
   *
   * @return true if so
   */
  public boolean someSit() {
    return seating == Seating.SOME_SIT;
  }

  /**
   * One page.
   *
   * @param number from 1
   * @param rounds its rounds
   */
  public record Page(int number, List<Row> rounds) {}

  /**
   * One round.
   *
   * @param number from 1
   * @param cells the matches, one for each column
   * @param sitting those who sit out
   */
  public record Row(int number, List<Cell> cells, Names sitting) {}

  /**
   * One match.
   *
   * @param first the side that begins
   * @param second the other side; no names in a group of mates or an empty cell
   */
  public record Cell(Names first, Names second) {}

  /**
   * Names on one line.
   *
   * @param names the names, or empty
   * @param headStart points given to them, for example "+2", or empty
   * @param size the size of the type as a style
   */
  public record Names(String names, String headStart, String size) {}
}
