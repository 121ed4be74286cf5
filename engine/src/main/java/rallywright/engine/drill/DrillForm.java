package rallywright.engine.drill;

import java.util.Optional;
import rallywright.engine.court.Direction;
import rallywright.engine.court.Lane;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.RoundThePost;
import rallywright.engine.score.Scoring;

/** What a drill is made of beyond its words: a scored game on a lane, or a stretch of time. */
public sealed interface DrillForm {

  /**
   * How the drill lies on the court.
   *
   * @return empty where everybody moves freely
   */
  Optional<Layout> onCourt();

  /**
   * A scored game between the two sides.
   *
   * @param layout how it lies on the court
   * @param feed how a rally starts
   * @param format how it is counted
   * @param serving where the players stand for serve and receive
   * @param roundThePost whether a ball round the post wins a rally on a diagonal
   * @param advantage what the first role is worth between equals: none in an even drill; in a full
   *     game the first role serves
   * @param seconds how long one rally takes
   */
  record Scored(
      Layout layout,
      Feed feed,
      GameFormat format,
      Serving serving,
      RoundThePost roundThePost,
      RoleAdvantage advantage,
      RallySeconds seconds)
      implements DrillForm {

    /** Checks that roles, advantage, feed and scoring fit together. */
    public Scored {
      if (layout.isEven() && (advantage.logit() != 0 || advantage.sd() != 0)) {
        throw new IllegalArgumentException(
            "The advantage (%s) must be 0 in an even drill, where A and B are only names."
                    .formatted(advantage.logit())
                + " Maybe leave it out, or name two roles.");
      }
      if (!layout.isEven() && advantage.sd() == 0) {
        throw new IllegalArgumentException(
            "A drill with two roles needs an advantage with a spread above 0."
                + " Maybe 0 with a spread of 0.4, if nobody knows.");
      }
      boolean serves = feed.by() == Feed.By.SERVER;
      if (serves == (serving == Serving.FEED)) {
        throw new IllegalArgumentException(
            "A serve needs a place for server and receiver, a feed has none."
                + " Maybe serving: fixed lane.");
      }
      if (!serves && format.scoring() != Scoring.EVERY_RALLY) {
        throw new IllegalArgumentException(
            "A game that starts with a feed must count every rally, but here %s."
                    .formatted(format.scoring().label())
                + " Maybe scoring: every rally.");
      }
      boolean crosses = layout.directions().stream().anyMatch(Direction::isCross);
      if (roundThePost == RoundThePost.LEGAL_ON_FULL_COURT && !crosses) {
        throw new IllegalArgumentException(
            "A ball round the post can only count where the drill is played cross-court."
                + " Maybe add cross-even and cross-odd to the directions.");
      }
    }

    @Override
    public Optional<Layout> onCourt() {
      return Optional.of(layout);
    }

    /**
     * How the game is counted on a lane.
     *
     * @param lane the lane
     * @return the format with the places of server and receiver
     */
    public GameFormat formatOn(Lane lane) {
      return serving.on(format, lane);
    }

    /**
     * What a ball round the post is worth in a direction: it can only count on a diagonal.
     *
     * @param direction the direction of play
     * @return the reading
     */
    public RoundThePost roundThePostIn(Direction direction) {
      return direction.isCross() ? roundThePost : RoundThePost.NOT_ALLOWED;
    }
  }

  /**
   * A stretch of time in which nothing is scored.
   *
   * @param onCourt how it lies on the court; empty where everybody moves freely
   * @param feed how the ball is put in play; empty where there is no ball
   * @param minutes how long it lasts, 1 to 30 minutes
   */
  record Timed(Optional<Layout> onCourt, Optional<Feed> feed, double minutes) implements DrillForm {

    private static final double LONGEST = 30;

    /** Checks the length; the check is written so that NaN fails it. */
    public Timed {
      if (!(minutes >= 1 && minutes <= LONGEST)) {
        throw new IllegalArgumentException(
            "The length (%s min) must lie from 1 to 30 minutes. Maybe 5.".formatted(minutes));
      }
      if (onCourt.isPresent() != feed.isPresent()) {
        throw new IllegalArgumentException(
            "A drill on a lane needs a feed, one without a lane has none. Maybe add a feed.");
      }
    }
  }
}
