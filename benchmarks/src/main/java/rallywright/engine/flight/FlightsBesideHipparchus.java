package rallywright.engine.flight;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/**
 * Trajectories a second beside Hipparchus on the same problems, what a flight allocates, and the
 * times of windows and aims, in one run. The tolerance of each method is the loosest of 1e-3 halved
 * again and again with which all landings are right to 1e-6 m.
 */
public final class FlightsBesideHipparchus {

  private static final int FLIGHTS = 2000;
  private static final int ROUNDS = 15;
  private static final double WANTED_M = 1e-6;
  private static final Conditions WIND =
      new Conditions(Ball.OUTDOOR, Air.of(20, 50, Air.SEA_LEVEL_PA), Wind.constant(-3, 1));

  private FlightsBesideHipparchus() {}

  /**
   * Prints the tables.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    List<Launch> launches = launches();
    double[] exact = landings(launches, own(1e-13));
    double ownTolerance = loosest(launches, exact, FlightsBesideHipparchus::own);
    double otherTolerance = loosest(launches, exact, FlightsBesideHipparchus::hipparchus);
    ToDoubleFunction<Launch> own = own(ownTolerance);
    ToDoubleFunction<Launch> other = hipparchus(otherTolerance);
    double[] seconds = sideBySide(launches, own, other);
    System.out.println(
        "| method | tolerance | largest error, m | flights a second | bytes a flight |");
    System.out.println("| --- | ---: | ---: | ---: | ---: |");
    row("own", ownTolerance, worst(launches, exact, own), seconds[0], bytes(launches, own));
    row(
        "Hipparchus DormandPrince853",
        otherTolerance,
        worst(launches, exact, other),
        seconds[1],
        bytes(launches, other));
    System.out.printf(Locale.ROOT, "%nRatio %.1f%n%n", seconds[1] / seconds[0]);
    AimTimes.print();
    AimHills.print();
  }

  private static void row(
      String name, double tolerance, double error, double seconds, double bytes) {
    System.out.printf(
        Locale.ROOT,
        "| %s | %.1e | %.1e | %.0f | %.0f |%n",
        name,
        tolerance,
        error,
        FLIGHTS / seconds,
        bytes);
  }

  /** Dinks, drops, drives and lobs with spin, by a fixed seed. */
  private static List<Launch> launches() {
    SplittableRandom random = new SplittableRandom(7);
    List<Launch> launches = new ArrayList<>();
    for (int i = 0; i < FLIGHTS; i++) {
      double distance = 2 + 5 * random.nextDouble();
      double elevation = 3 + 45 * random.nextDouble();
      double speed = 5 + distance * (0.6 + random.nextDouble());
      launches.add(
          Launch.of(
              new Vector(-distance, 2 - 4 * random.nextDouble(), 0.4 + random.nextDouble()),
              LaunchAim.degrees(speed, elevation, 20 - 40 * random.nextDouble()),
              150 - 250 * random.nextDouble()));
    }
    return launches;
  }

  private static ToDoubleFunction<Launch> own(double tolerance) {
    FlightSolver solver = FlightSolver.of(WIND).withTolerance(tolerance);
    return launch -> {
      solver.run(launch);
      return solver.landing().x();
    };
  }

  private static ToDoubleFunction<Launch> hipparchus(double tolerance) {
    HipparchusFlight flight = new HipparchusFlight(WIND, tolerance);
    return flight::landingX;
  }

  /** How a method flies with a tolerance. */
  private interface Method {
    ToDoubleFunction<Launch> with(double tolerance);
  }

  private static double loosest(List<Launch> launches, double[] exact, Method method) {
    double tolerance = 1e-3;
    while (worst(launches, exact, method.with(tolerance)) > WANTED_M) {
      tolerance /= 2;
    }
    return tolerance;
  }

  private static double[] landings(List<Launch> launches, ToDoubleFunction<Launch> flight) {
    return launches.stream().mapToDouble(flight).toArray();
  }

  private static double worst(
      List<Launch> launches, double[] exact, ToDoubleFunction<Launch> flight) {
    double[] found = landings(launches, flight);
    double worst = 0;
    for (int i = 0; i < found.length; i++) {
      worst = Math.max(worst, Math.abs(found[i] - exact[i]));
    }
    return worst;
  }

  /** Rounds in turn; the median of the later ones, in seconds for all flights. */
  private static double[] sideBySide(
      List<Launch> launches, ToDoubleFunction<Launch> one, ToDoubleFunction<Launch> other) {
    double[] first = new double[ROUNDS];
    double[] second = new double[ROUNDS];
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      double a = seconds(launches, one);
      double b = seconds(launches, other);
      if (round >= 0) {
        first[round] = a;
        second[round] = b;
      }
    }
    Arrays.sort(first);
    Arrays.sort(second);
    return new double[] {first[ROUNDS / 2], second[ROUNDS / 2]};
  }

  /** Processor time of this thread, so that other work on the machine counts less. */
  private static double seconds(List<Launch> launches, ToDoubleFunction<Launch> flight) {
    long start = threads().getCurrentThreadCpuTime();
    double sum = 0;
    for (Launch launch : launches) {
      sum += flight.applyAsDouble(launch);
    }
    if (Double.isNaN(sum)) {
      throw new IllegalStateException("A flight has no landing.");
    }
    return (threads().getCurrentThreadCpuTime() - start) / 1e9;
  }

  private static double bytes(List<Launch> launches, ToDoubleFunction<Launch> flight) {
    long thread = Thread.currentThread().getId();
    seconds(launches, flight);
    long before = threads().getThreadAllocatedBytes(thread);
    seconds(launches, flight);
    return Math.floor((double) (threads().getThreadAllocatedBytes(thread) - before) / FLIGHTS);
  }

  private static ThreadMXBean threads() {
    return (ThreadMXBean) ManagementFactory.getThreadMXBean();
  }
}
