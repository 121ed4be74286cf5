package rallywright.engine.aim;

import java.util.List;
import java.util.Optional;
import rallywright.engine.aim.ShotSetting.Area;
import rallywright.engine.aim.ShotSetting.Day;
import rallywright.engine.aim.ShotSetting.Place;
import rallywright.engine.flight.AimSearch;
import rallywright.engine.flight.ShotLine;

/**
 * Straight against cross-court: the same shot from the same place along both lines of a half.
 *
 * @param shot what is hit, by its straight variant
 * @param straight down the line
 * @param cross on the diagonal
 */
public record LineTable(UsualShot shot, Line straight, Line cross) {

  /** The shots that are hit along both lines. */
  public static final List<UsualShot> SHOTS =
      List.of(UsualShot.DROP_STRAIGHT, UsualShot.RESET, UsualShot.DINK_STRAIGHT, UsualShot.DRIVE);

  /**
   * One line.
   *
   * @param line distance, net on the way, court behind the net: geometry, the same for all balls
   * @param way the best aim of the level and what the window forgives, which balls change; empty
   *     where nothing succeeds
   */
  public record Line(ShotLine line, Optional<Way> way) {}

  /**
   * What balls change.
   *
   * @param aim the best one of the level
   * @param forgives what the window does
   */
  public record Way(AimRange aim, Forgives forgives) {}

  /**
   * The two lines of a shot.
   *
   * @param shot what is hit
   * @param day ball, wind and air
   * @param level of the player
   * @return the comparison
   */
  public static LineTable of(UsualShot shot, Day day, double level) {
    ShotSetting usual = shot.usual().on(day).at(level);
    return new LineTable(shot, line(usual), line(mirrored(usual)));
  }

  /** The same with target and opponent in the other half. */
  private static ShotSetting mirrored(ShotSetting setting) {
    Area target = setting.target();
    Place middle = new Place(-target.middle().across(), target.middle().along());
    Place opponent = new Place(-setting.opponent().across(), setting.opponent().along());
    return new ShotSetting(
        setting.shot(),
        setting.hitter(),
        new Area(middle, target.width(), target.depth()),
        opponent,
        setting.day(),
        setting.player());
  }

  private static Line line(ShotSetting setting) {
    ShotLine line = ShotLine.of(setting.asShot(), setting.middle());
    return new Line(
        line,
        AimSearch.of(setting.asShot(), setting.scatter())
            .near(line.window())
            .map(best -> BallsApart.of(setting, line, best))
            .map(balls -> new Way(balls.aim(), balls.forgives())));
  }
}
