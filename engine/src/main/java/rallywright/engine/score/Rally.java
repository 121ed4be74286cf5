package rallywright.engine.score;

import java.util.Optional;

/**
 * One rally as it counts: who won it and, where somebody noted it, how it ended.
 *
 * @param winner who won the rally
 * @param bonus whether it was won by a bonus ending
 * @param ending how it ended, if noted; nothing in the score depends on it
 */
public record Rally(Side winner, Bonus bonus, Optional<Ending> ending) {

  /** A way to win a rally that a drill allows on top of the usual ones. */
  public enum Bonus {
    /** The rally ended as rallies do. */
    NONE,
    /**
     * A ball legally played round the post won the rally outright; see {@link RoundThePost} for
     * what is legal.
     */
    ROUND_THE_POST
  }

  /**
   * A rally without a note.
   *
   * @param winner who won it
   * @return the rally
   */
  public static Rally wonBy(Side winner) {
    return new Rally(winner, Bonus.NONE, Optional.empty());
  }

  /**
   * A rally won by a ball round the post.
   *
   * @param winner who played the ball
   * @return the rally
   */
  public static Rally roundThePost(Side winner) {
    return new Rally(winner, Bonus.ROUND_THE_POST, Optional.empty());
  }

  /**
   * A copy with a note of how it ended.
   *
   * @param note how it ended
   * @return the copy
   */
  public Rally withEnding(Ending note) {
    return new Rally(winner, bonus, Optional.of(note));
  }
}
