package rallywright.engine.point;

import java.util.List;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Partner;

/**
 * One side of a point: a single player or a pair.
 *
 * <p>Serve and return are one player's alone; later balls are shared. Partners of a pair who change
 * places with the score share them evenly. Where they keep their places, the one on the left takes
 * {@link #LEFT_SHARE}.
 */
public sealed interface Team {

  /**
   * The share of the later balls that the player on the left of a pair takes, because the balls
   * down the middle come to the forehand of most players there. Assumption of this project.
   */
  double LEFT_SHARE = 0.6;

  /**
   * The players.
   *
   * @return one or two; a single player counts as the one who is right at even
   */
  List<Partner> partners();

  /**
   * One player.
   *
   * @param partner which
   * @return the skills
   */
  SkillProfile profile(Partner partner);

  /**
   * How much one player counts in a stage.
   *
   * @param stage the stage
   * @param striker who served or returned
   * @param who the player asked for
   * @return from 0 to 1; the shares of a side sum to 1
   */
  double share(Stage stage, Partner striker, Partner who);

  /**
   * Whether a stage is the server's and the returner's alone.
   *
   * @param stage the stage
   * @return true before the third shot
   */
  private static boolean isOfOne(Stage stage) {
    return stage == Stage.SERVE || stage == Stage.RETURN;
  }

  /**
   * A single player.
   *
   * @param player the skills
   */
  record Single(SkillProfile player) implements Team {
    @Override
    public List<Partner> partners() {
      return List.of(Partner.RIGHT_AT_EVEN);
    }

    @Override
    public SkillProfile profile(Partner partner) {
      return player;
    }

    @Override
    public double share(Stage stage, Partner striker, Partner who) {
      return 1;
    }
  }

  /** Where the partners of a pair stand. */
  enum CourtSides {
    /** They change places with the score, as the serve order puts them. */
    BY_SCORE,
    /** The player who is right at even always plays on the left. */
    RIGHT_AT_EVEN_KEEPS_LEFT,
    /** The partner always plays on the left. */
    LEFT_AT_EVEN_KEEPS_LEFT;

    double shareOf(Partner who) {
      if (this == BY_SCORE) {
        return 0.5;
      }
      boolean left = (this == RIGHT_AT_EVEN_KEEPS_LEFT) == (who == Partner.RIGHT_AT_EVEN);
      return left ? LEFT_SHARE : 1 - LEFT_SHARE;
    }
  }

  /**
   * A pair.
   *
   * @param rightAtEven who starts the game on the right and serves first
   * @param leftAtEven the partner
   * @param sides where they stand
   */
  record Pair(SkillProfile rightAtEven, SkillProfile leftAtEven, CourtSides sides) implements Team {
    @Override
    public List<Partner> partners() {
      return List.of(Partner.RIGHT_AT_EVEN, Partner.LEFT_AT_EVEN);
    }

    @Override
    public SkillProfile profile(Partner partner) {
      return partner == Partner.RIGHT_AT_EVEN ? rightAtEven : leftAtEven;
    }

    @Override
    public double share(Stage stage, Partner striker, Partner who) {
      if (isOfOne(stage)) {
        return who == striker ? 1 : 0;
      }
      return sides.shareOf(who);
    }
  }
}
