package rallywright.engine.drill;

import rallywright.engine.court.HalfArea;
import rallywright.engine.court.Spot;
import rallywright.engine.quantity.Source;

/**
 * A closed test of one skill: so many balls, count those that succeed. It ties the scale of skill
 * to something that stays the same when everybody improves.
 *
 * @param key the short name in files and in the database
 * @param name the name for people, at most 40 characters
 * @param skill the one skill that it measures
 * @param balls how many balls one player strikes, 5 to 100
 * @param hit what counts as a success, one sentence
 * @param setUp who stands where and who feeds, one or two sentences
 * @param court where the player stands and the target
 * @param difficulty how hard it is before any was counted
 * @param secondsPerBall the time of one ball, feed and pause included
 * @param advice what a coach says and brings
 */
public record Yardstick(
    DrillKey key,
    String name,
    Skill skill,
    int balls,
    String hit,
    String setUp,
    OnCourt court,
    Difficulty difficulty,
    SecondsPrior secondsPerBall,
    Advice advice) {

  private static final int FEWEST = 5;
  private static final int MOST = 100;

  /**
   * Where it happens.
   *
   * @param player where the player strikes from
   * @param feeder where the feeder stands, at the other end
   * @param target where the ball must land, at the feeder's end
   */
  public record OnCourt(Spot player, Spot feeder, HalfArea target) {}

  /**
   * How hard a test is: the skill at which half of the balls succeed.
   *
   * @param logit the skill in log odds, within ±4; 0 is a player of level 3.5
   * @param sd how sure that is, above 0 and at most 2
   * @param source where the two numbers come from
   */
  public record Difficulty(double logit, double sd, Source source) {

    /** Checks the ranges; the check is written so that NaN fails it. */
    public Difficulty {
      if (!(Math.abs(logit) <= 4 && sd > 0 && sd <= 2)) {
        throw new IllegalArgumentException(
            "The difficulty (%s, spread %s) must lie from -4 to 4 with a spread above 0 up to 2."
                    .formatted(logit, sd)
                + " Maybe 0 with a spread of 0.5.");
      }
    }
  }

  /** Checks the words and the number of balls. */
  public Yardstick {
    name = Wording.checked("name", name, Wording.NAME);
    hit = Wording.checked("hit", hit, Wording.LINE);
    setUp = Wording.checked("set-up", setUp, Wording.PARAGRAPH);
    if (balls < FEWEST || balls > MOST) {
      throw new IllegalArgumentException(
          "The number of balls (%d) must lie from 5 to 100. Maybe 20.".formatted(balls));
    }
  }

  /**
   * How long it takes one player.
   *
   * @return minutes, feeds and pauses included
   */
  public double minutesForOne() {
    return balls * secondsPerBall.mean() / 60;
  }
}
