package rallywright.engine.aim;

import rallywright.engine.flight.Ball;

/** The two balls in use. */
public enum BallKind {
  /** 40 small holes. */
  OUTDOOR("outdoor ball"),
  /** 26 large holes. */
  INDOOR("indoor ball");

  private final String words;

  BallKind(String words) {
    this.words = words;
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
    return this == OUTDOOR ? Ball.OUTDOOR : Ball.INDOOR;
  }
}
