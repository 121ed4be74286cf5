package rallywright.engine.rotation;

/**
 * How long a search goes on, in moves and not in seconds, so that it can be repeated.
 *
 * @param runs independent runs
 * @param moves moves in each run
 */
public record SearchEffort(int runs, int moves) {

  /** For a page that waits: well below a second on a laptop. */
  public static final SearchEffort USUAL = new SearchEffort(3, 1_000_000);

  /** For a rotation that is made once and printed. */
  public static final SearchEffort THOROUGH = new SearchEffort(8, 4_000_000);

  /** Checks the range. */
  public SearchEffort {
    if (runs < 1 || moves < 1) {
      throw new IllegalArgumentException(
          "The effort (%d runs of %d moves) must be 1 or more of each. Maybe 3 runs."
              .formatted(runs, moves));
    }
  }
}
