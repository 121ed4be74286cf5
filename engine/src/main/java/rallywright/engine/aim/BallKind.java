package rallywright.engine.aim;

import rallywright.engine.flight.Ball;

/** The two balls in use. */
public enum BallKind {
  /** 40 small holes. */
  OUTDOOR("outdoor ball", Ball.OUTDOOR),
  /** 26 large holes. */
  INDOOR("indoor ball", Ball.INDOOR);

  private final String words;
  private final Ball ball;

  BallKind(String words, Ball ball) {
    this.words = words;
    this.ball = ball;
  }

  /**
   * The ball in words.
   *
   * @return for example "outdoor ball"
   */
  public String words() {
    return words;
  }

  /**
   * The ball as the flight sees it.
   *
   * @return its constants with their sources
   */
  public Ball ball() {
    return ball;
  }
}
