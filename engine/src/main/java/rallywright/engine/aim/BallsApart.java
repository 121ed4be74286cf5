package rallywright.engine.aim;

import rallywright.engine.flight.AimSearch;
import rallywright.engine.flight.BallSpread;
import rallywright.engine.flight.BestAim;
import rallywright.engine.flight.Conditions;
import rallywright.engine.flight.Launch;
import rallywright.engine.flight.Opponent;
import rallywright.engine.flight.Requirement;
import rallywright.engine.flight.Shot;
import rallywright.engine.flight.ShotLine;
import rallywright.engine.flight.TimeLeft;

/** What a shot allows with each of the balls that stand for the spread of drag and lift. */
final class BallsApart {

  private static final double NEAREST_REACH_M = 0.1;

  private final ShotSetting setting;
  private final BallSpread<OneBall> balls;

  /** A ball, its window along the line to the target, and the best aim with it. */
  private record OneBall(Conditions conditions, ShotLine line, BestAim best) {}

  private BallsApart(ShotSetting setting, BallSpread<OneBall> balls) {
    this.setting = setting;
    this.balls = balls;
  }

  /**
   * Tries the other balls.
   *
   * @param setting the shot
   * @param line of the central ball
   * @param best aim with the central ball, to which the player is used
   */
  static BallsApart of(ShotSetting setting, ShotLine line, BestAim best) {
    Conditions central = setting.day().conditions();
    return new BallsApart(
        setting,
        BallSpread.of(
            central,
            setting.hitter().spin().radiansPerSecond() != 0,
            each ->
                each.equals(central)
                    ? new OneBall(central, line, best)
                    : other(setting, each, line, best)));
  }

  private static OneBall other(
      ShotSetting setting, Conditions conditions, ShotLine central, BestAim best) {
    Shot shot = setting.asShot(conditions, setting.target());
    ShotLine line = central.like(shot);
    return new OneBall(
        conditions, line, AimSearch.of(shot, setting.scatter()).like(best, line.window()));
  }

  AimRange aim() {
    return new AimRange(
        balls.range(ball -> ball.best().chance()),
        balls.range(ball -> ball.best().clearance()),
        balls.range(ball -> ball.best().landing().x()),
        balls.range(ball -> ball.best().aim().speed()));
  }

  Forgives forgives() {
    return new Forgives(
        balls.range(ball -> ball.line().perSpeed()),
        balls.range(ball -> ball.line().perElevation()),
        balls.range(ball -> ball.line().window().area()));
  }

  Closer.TimeRange opponent() {
    return new Closer.TimeRange(
        left(balls.central()),
        balls.range(ball -> left(ball).ball().seconds()),
        balls.range(ball -> left(ball).stepM()));
  }

  private TimeLeft left(OneBall ball) {
    double spin = setting.hitter().spin().radiansPerSecond();
    double reach =
        Math.max(NEAREST_REACH_M, setting.opponent().along() - Requirement.NotAttackable.ARM_M);
    return Opponent.READY.against(
        Launch.of(setting.contact(), ball.best().aim(), spin), ball.conditions(), reach);
  }
}
