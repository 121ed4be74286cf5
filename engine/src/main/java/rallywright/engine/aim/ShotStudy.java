package rallywright.engine.aim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rallywright.engine.aim.ShotAnswer.BestShot;
import rallywright.engine.aim.ShotAnswer.NetBand;
import rallywright.engine.aim.ShotAnswer.PathPoint;
import rallywright.engine.court.Net;
import rallywright.engine.flight.AimSearch;
import rallywright.engine.flight.BestAim;
import rallywright.engine.flight.Flight;
import rallywright.engine.flight.FlightSolver;
import rallywright.engine.flight.Launch;
import rallywright.engine.flight.LaunchAim;
import rallywright.engine.flight.LaunchBox;
import rallywright.engine.flight.LaunchWindow;
import rallywright.engine.flight.Passage;
import rallywright.engine.flight.Shot;
import rallywright.engine.flight.ShotLine;

/**
 * Works out what a shot allows.
 *
 * <p><b>Card.</b> In: a shot as a coach sets it up. Out: its window, the band over the net, the
 * best aim of a player of the level and how often it comes off; in a full answer also how far balls
 * of one sort differ, what a steadier hand would bring and what time the opponent has. Limits:
 * those of {@link AimSearch}; the scatter is assumed from the level; for another ball the player is
 * taken to have found the aim that suits it.
 */
public final class ShotStudy {

  private static final int PATH_POINTS = 28;
  private static final int EDGES_LOOKED_AT = 200;
  private static final double ROUGHLY_M = 1e-6;

  private final ShotSetting setting;
  private final Shot shot;
  private final AimSearch search;

  private ShotStudy(ShotSetting setting) {
    this.setting = setting;
    shot = setting.asShot();
    search = AimSearch.of(shot, setting.scatter());
  }

  /**
   * The whole answer.
   *
   * @param setting the shot
   * @return window, best aim, and what only a full answer has
   */
  public static ShotAnswer full(ShotSetting setting) {
    ShotStudy study = new ShotStudy(setting);
    ShotLine line = ShotLine.of(study.shot, setting.middle());
    Optional<BestAim> best = study.search.near(line.window());
    return study.answer(line.window(), best, best.map(aim -> study.closer(line, aim)));
  }

  /**
   * An answer while a picture is dragged: the window and about the best aim.
   *
   * @param setting the shot
   * @return the answer without what only a full answer has
   */
  public static ShotAnswer live(ShotSetting setting) {
    ShotStudy study = new ShotStudy(setting);
    LaunchWindow window = LaunchWindow.of(study.shot, setting.bearing(), LaunchBox.EVERY_SHOT);
    return study.answer(window, study.search.glance(window), Optional.empty());
  }

  private ShotAnswer answer(LaunchWindow window, Optional<BestAim> best, Optional<Closer> closer) {
    return new ShotAnswer(setting, window, band(window), best.map(this::shown), closer);
  }

  private BestShot shown(BestAim best) {
    Flight flight = fly(best.aim(), Double.NaN);
    @Nullable Passage net = flight.net();
    double across = net == null ? 0 : net.ball().position().y();
    return new BestShot(
        best,
        path(best.aim(), flight),
        LandingSpread.of(setting, best.aim(), setting.scatter()),
        Net.heightM(across));
  }

  private Flight fly(LaunchAim aim, double reachX) {
    double spin = setting.hitter().spin().radiansPerSecond();
    return FlightSolver.of(shot.conditions())
        .reachAt(reachX)
        .fly(Launch.of(shot.contact(), aim, spin));
  }

  private List<PathPoint> path(LaunchAim aim, Flight flight) {
    double from = shot.contact().x();
    double to = flight.landing().ball().position().x();
    List<PathPoint> points = new ArrayList<>();
    points.add(point(flight.launch()));
    for (int i = 1; i < PATH_POINTS; i++) {
      @Nullable Passage at = fly(aim, from + (to - from) * i / PATH_POINTS).reach();
      if (at != null) {
        points.add(point(at.ball()));
      }
    }
    points.add(point(flight.landing().ball()));
    return points;
  }

  private static PathPoint point(Launch ball) {
    return new PathPoint(-ball.position().y(), ball.position().x(), ball.position().z());
  }

  /** The least and the most air over the net along the window's edge: inside it lies between. */
  private Optional<NetBand> band(LaunchWindow window) {
    List<LaunchWindow.Edge> edges = window.edges();
    FlightSolver solver = FlightSolver.of(shot.conditions()).withTolerance(ROUGHLY_M);
    double spin = setting.hitter().spin().radiansPerSecond();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    int step = 1 + edges.size() / EDGES_LOOKED_AT;
    for (int i = 0; i < edges.size(); i += step) {
      LaunchWindow.Corner corner = edges.get(i).from();
      LaunchAim aim = new LaunchAim(corner.speed(), corner.elevation(), window.bearing());
      @Nullable Passage net = solver.fly(Launch.of(shot.contact(), aim, spin)).net();
      if (net != null) {
        double air = air(net);
        low = Math.min(low, air);
        high = Math.max(high, air);
      }
    }
    return low <= high ? Optional.of(new NetBand(Math.max(0, low), high)) : Optional.empty();
  }

  private double air(Passage net) {
    return net.ball().position().z()
        - shot.conditions().ball().radiusM()
        - Net.heightM(net.ball().position().y());
  }

  private Closer closer(ShotLine line, BestAim best) {
    BallsApart balls = BallsApart.of(setting, line, best);
    return new Closer(
        balls.aim(),
        balls.forgives(),
        search.steadier(best.aim(), Closer.A_QUARTER_LESS),
        balls.opponent());
  }
}
