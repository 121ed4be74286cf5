package rallywright.engine.aim;

import rallywright.engine.aim.ShotSetting.Area;
import rallywright.engine.aim.ShotSetting.Day;
import rallywright.engine.aim.ShotSetting.Hitter;
import rallywright.engine.aim.ShotSetting.Place;

/**
 * The usual shots of doubles on half a court, each with the set-up that a coach starts from. Places
 * and heights of contact are common practice, no source.
 */
public enum UsualShot {
  /** The third shot, down the line. */
  DROP_STRAIGHT("Third-shot drop, straight", ShotStyle.SOFT, Stand.BACK_LOW, 5, Depth.KITCHEN),
  /** The third shot, on the diagonal. */
  DROP_CROSS("Third-shot drop, cross-court", ShotStyle.SOFT, Stand.BACK_LOW, -5, Depth.KITCHEN),
  /** A hard third shot. */
  DRIVE("Drive", ShotStyle.HARD, Stand.INSIDE, 5, Depth.BEHIND_THE_KITCHEN),
  /** A deep serve. */
  SERVE("Deep serve", ShotStyle.DEEP, Stand.BACK_HIGH, -5, Depth.BACK),
  /** From the transition zone into the kitchen. */
  RESET("Reset", ShotStyle.SOFT, Stand.MIDDLE, 5, Depth.KITCHEN),
  /** Kitchen to kitchen, down the line. */
  DINK_STRAIGHT("Dink, straight", ShotStyle.SOFT, Stand.LINE_LOW, 5, Depth.KITCHEN),
  /** Kitchen to kitchen, on the diagonal. */
  DINK_CROSS("Dink, cross-court", ShotStyle.SOFT, Stand.LINE_LOW, -5, Depth.KITCHEN),
  /** A volley that keeps the other side deep. */
  DEEP_VOLLEY("Deep volley", ShotStyle.DEEP, Stand.LINE_HIGH, 5, Depth.BACK),
  /** Over the one at the line. */
  LOB("Lob", ShotStyle.OVER, Stand.LINE_LOW, 5, Depth.BACK);

  private static final double FOOT = 0.3048;
  private static final double ACROSS_FEET = 5;
  private static final double LANE_FEET = 10;
  private static final double AT_THE_LINE_FEET = 7.5;
  private static final double BACK_FEET = 22.5;
  private static final double USUAL_LEVEL = 3.5;

  private final String words;
  private final ShotStyle style;
  private final Stand stand;
  private final double targetFeet;
  private final Depth depth;

  /** Where the hitter stands beyond the net (below 0) and how high the ball is hit, in feet. */
  private enum Stand {
    BACK_LOW(-22.5, 2),
    BACK_HIGH(-22.5, 2.5),
    INSIDE(-20, 2.5),
    MIDDLE(-14, 1.5),
    LINE_LOW(-7.5, 1.5),
    LINE_HIGH(-8, 3);

    private final double along;
    private final double height;

    Stand(double along, double height) {
      this.along = along;
      this.height = height;
    }
  }

  /** Which part of the half counts, in feet from the net. */
  private enum Depth {
    KITCHEN(0, 7),
    BEHIND_THE_KITCHEN(7, 22),
    BACK(15, 22);

    private final double from;
    private final double to;

    Depth(double from, double to) {
      this.from = from;
      this.to = to;
    }
  }

  UsualShot(String words, ShotStyle style, Stand stand, double targetFeet, Depth depth) {
    this.words = words;
    this.style = style;
    this.stand = stand;
    this.targetFeet = targetFeet;
    this.depth = depth;
  }

  /**
   * The shot in the trade's words.
   *
   * @return for example "Third-shot drop, straight"
   */
  public String words() {
    return words;
  }

  /**
   * What it must do.
   *
   * @return the style
   */
  public ShotStyle style() {
    return style;
  }

  /**
   * Whether it goes along a diagonal.
   *
   * @return true if the target lies in the other half
   */
  public boolean isCross() {
    return targetFeet < 0;
  }

  /**
   * The usual set-up, from the even side.
   *
   * @return a player of level 3.5 on a calm day with the outdoor ball
   */
  public ShotSetting usual() {
    double middle = (depth.from + depth.to) / 2;
    double opponent = style == ShotStyle.DEEP ? BACK_FEET : AT_THE_LINE_FEET;
    return new ShotSetting(
        this,
        new Hitter(
            Place.feet(ACROSS_FEET, stand.along),
            stand.height * FOOT,
            this == DRIVE ? HitSpin.TOPSPIN : HitSpin.NONE),
        new Area(Place.feet(targetFeet, middle), LANE_FEET * FOOT, (depth.to - depth.from) * FOOT),
        Place.feet(targetFeet, opponent),
        Day.CALM,
        ShotSetting.Player.ofLevel(USUAL_LEVEL));
  }
}
