package rallywright.engine.skill;

import rallywright.engine.score.Side;

/**
 * A scored game.
 *
 * @param week the week in which it was played, from 0
 * @param contest what was contested
 * @param sides who played
 * @param result how it went
 * @param clarity how much the weather let its rallies tell
 */
public record Game(int week, Contest contest, Sides sides, Result result, Clarity clarity)
    implements Evidence {
  /** Checks that the result tells enough about the contest. */
  public Game {
    if (result instanceof RalliesWon && contest.roles() == Contest.Roles.BY_SERVE) {
      throw new IllegalArgumentException(
          "The result gives only rallies won, but in this contest the roles follow the server."
              + " Maybe give the score with who served first, or the rallies by server.");
    }
  }

  /**
   * A game on a calm day.
   *
   * @param week the week in which it was played, from 0
   * @param contest what was contested
   * @param sides who played
   * @param result how it went
   */
  public Game(int week, Contest contest, Sides sides, Result result) {
    this(week, contest, sides, result, Clarity.FULL);
  }

  /** The logit of the chance that the server's side wins a rally, flattened by the weather. */
  SkillSum serverEdge(Side server) {
    return contest.serverEdge(sides, week, server).times(clarity.share());
  }
}
