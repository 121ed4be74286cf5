package rallywright.engine.aim;

import java.util.List;
import java.util.Optional;
import rallywright.engine.flight.BestAim;
import rallywright.engine.flight.LaunchWindow;

/**
 * What a shot allows.
 *
 * @param setting the shot
 * @param window the launches that do all that is asked
 * @param band how high they pass over the net; empty where nothing succeeds
 * @param best where this player should aim; empty where nothing succeeds
 * @param closer what only a full answer has
 */
public record ShotAnswer(
    ShotSetting setting,
    LaunchWindow window,
    Optional<NetBand> band,
    Optional<BestShot> best,
    Optional<Closer> closer) {

  /**
   * Air between the net's top and the ball.
   *
   * @param low the least, in metres
   * @param high the most, in metres
   */
  public record NetBand(double low, double high) {}

  /**
   * The best aim and what the ball does when it goes as aimed.
   *
   * @param aim speed, angles, chance, landing
   * @param path the ball's way to the floor
   * @param scatter where the balls of this player land
   * @param netHeight of the net where the ball crosses it, in metres
   */
  public record BestShot(
      BestAim aim, List<PathPoint> path, LandingSpread scatter, double netHeight) {

    /** Copies the list. */
    public BestShot {
      path = List.copyOf(path);
    }

    /** Where it lands, as the court's reader sees it. */
    public ShotSetting.Place landing() {
      return new ShotSetting.Place(-aim.landing().y(), aim.landing().x());
    }
  }

  /**
   * A point of the ball's way, as the court's reader sees it, in metres.
   *
   * @param across to the right of the centre line
   * @param along beyond the net
   * @param height of the ball's centre
   */
  public record PathPoint(double across, double along, double height) {}
}
