package rallywright.engine.skill;

/**
 * A scored game.
 *
 * @param week the week in which it was played, from 0
 * @param contest what was contested
 * @param sides who played
 * @param result how it went
 */
public record Game(int week, Contest contest, Sides sides, Result result) implements Evidence {
  /** Checks that the result tells enough about the contest. */
  public Game {
    if (result instanceof RalliesWon && contest.roles() == Contest.Roles.BY_SERVE) {
      throw new IllegalArgumentException(
          "The result gives only rallies won, but in this contest the roles follow the server."
              + " Maybe give the score with who served first, or the rallies by server.");
    }
  }
}
