package rallywright.engine.aim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import rallywright.engine.court.Net;
import rallywright.engine.flight.AimSearch;
import rallywright.engine.flight.Flight;
import rallywright.engine.flight.FlightSolver;
import rallywright.engine.flight.Launch;
import rallywright.engine.flight.LaunchAim;
import rallywright.engine.flight.Passage;
import rallywright.engine.flight.Scatter;
import rallywright.engine.flight.Vector;

/**
 * How often the range said for a player's scatter holds the scatter that simulated balls came from.
 */
public final class ScatterCoverage {

  private static final int PLAYERS = 1500;
  private static final double TOLERANCE = 1e-6;

  private final ShotSetting setting;
  private final LaunchAim aim;
  private final FlightSolver solver;
  private final SplittableRandom random = new SplittableRandom(7);

  private ScatterCoverage(UsualShot shot, double level, double lowerDegrees) {
    setting = shot.usual().at(level);
    LaunchAim best =
        AimSearch.of(setting.asShot(), setting.scatter())
            .near(setting.bearing())
            .orElseThrow()
            .aim();
    aim =
        new LaunchAim(
            best.speed(), best.elevation() - Math.toRadians(lowerDegrees), best.bearing());
    solver = FlightSolver.of(setting.day().conditions()).withTolerance(TOLERANCE);
  }

  /**
   * Prints a table.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    System.out.println("| shot | level | balls | in the net | pace and height | direction |");
    System.out.println("| --- | ---: | ---: | ---: | ---: | ---: |");
    row(UsualShot.DROP_STRAIGHT, 4.5, 0, 20);
    row(UsualShot.DROP_STRAIGHT, 4.5, 0.7, 20);
    row(UsualShot.RESET, 4.0, 0, 20);
    row(UsualShot.DRIVE, 3.5, 0, 40);
  }

  private static void row(UsualShot shot, double level, double lowerDegrees, int balls) {
    ScatterCoverage coverage = new ScatterCoverage(shot, level, lowerDegrees);
    Scatter truth = coverage.setting.scatter();
    int inTheNet = 0;
    int pace = 0;
    int direction = 0;
    for (int player = 0; player < PLAYERS; player++) {
      LandingLines hit = coverage.hit(balls);
      inTheNet += hit.inTheNet();
      MeasuredScatter found = MeasuredScatter.of(coverage.setting, hit, coverage.aim.elevation());
      double more = truth.speed() / found.scatter().speed();
      double aside = truth.bearing() / found.scatter().bearing();
      pace += more > found.least() && more < found.most() ? 1 : 0;
      direction += aside > found.leastAside() && aside < found.mostAside() ? 1 : 0;
    }
    System.out.printf(
        Locale.ROOT,
        "| %s | %.1f | %d | %.2f | %.3f | %.3f |%n",
        shot.words(),
        level,
        balls,
        (double) inTheNet / PLAYERS / balls,
        (double) pace / PLAYERS,
        (double) direction / PLAYERS);
  }

  private LandingLines hit(int balls) {
    Scatter truth = setting.scatter();
    double radius = setting.day().conditions().ball().radiusM();
    double spin = setting.hitter().spin().radiansPerSecond();
    List<ShotSetting.Place> places = new ArrayList<>();
    int inTheNet = 0;
    while (places.size() + inTheNet < balls) {
      LaunchAim launch =
          new LaunchAim(
              aim.speed() * (1 + truth.speed() * random.nextGaussian()),
              aim.elevation() + truth.elevation() * random.nextGaussian(),
              aim.bearing() + truth.bearing() * random.nextGaussian());
      Flight flight = solver.fly(Launch.of(setting.contact(), launch, spin));
      @Nullable Passage net = flight.net();
      @Nullable Vector over = net == null ? null : net.ball().position();
      if (over != null && over.z() - radius > Net.heightM(over.y())) {
        Vector at = flight.landing().ball().position();
        places.add(new ShotSetting.Place(-at.y(), at.x()));
      } else {
        inTheNet++;
      }
    }
    return new LandingLines(places, inTheNet);
  }
}
