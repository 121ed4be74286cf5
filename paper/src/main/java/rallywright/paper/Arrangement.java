package rallywright.paper;

import java.util.List;

/**
 * How the games of a session are put into rows.
 *
 * @param mostRows rows of a block before it is broken
 * @param gamesInARow games side by side at the most
 */
record Arrangement(int mostRows, int gamesInARow) {

  /** Blocks whole, as long as they surely fit on half a sheet; games with room for a long name. */
  static final Arrangement USUAL = new Arrangement(8, 4);

  /** Closer ones, tried in turn where a session is too long for one page. */
  static final List<Arrangement> CLOSER =
      List.of(
          new Arrangement(8, 5),
          new Arrangement(4, 5),
          new Arrangement(2, 5),
          new Arrangement(1, 5));

  /** Blocks broken more often, tried where two pages or more are needed. */
  static final Arrangement BROKEN = new Arrangement(3, 4);
}
