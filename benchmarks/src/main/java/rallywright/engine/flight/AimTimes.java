package rallywright.engine.flight;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/** Times of windows and aims, and the chance beside a million simulated flights. */
final class AimTimes {

  private static final int RUNS = 15;
  private static final int SIMULATED = 1_000_000;

  private AimTimes() {}

  static void print() {
    Shot drop = shot(Requirement.LandsIn.kitchen());
    System.out.println("| question | level | median, ms of processor time |");
    System.out.println("| --- | ---: | ---: |");
    double bearing = Math.toRadians(5);
    time("window", 0, () -> LaunchWindow.of(drop, bearing, LaunchBox.EVERY_SHOT).area());
    for (double level : new double[] {3.0, 4.0, 5.0}) {
      AimSearch search = AimSearch.of(drop, Scatter.ofLevel(level));
      BestAim best = search.near(bearing).orElseThrow();
      time("chance at one aim", level, () -> search.chanceOf(best.aim()));
      time("best aim", level, () -> search.near(bearing).orElseThrow().chance());
    }
    System.out.println();
    System.out.println("| level | chance | simulated | standard error | difference | allowed |");
    System.out.println("| ---: | ---: | ---: | ---: | ---: | ---: |");
    for (double level : new double[] {2.5, 3.0, 3.5, 4.0, 4.5, 5.0}) {
      compare(drop, level, bearing);
    }
  }

  private static Shot shot(Requirement.LandsIn place) {
    return new Shot(
        new Vector(-6.7, -1.5, 0.6),
        0,
        Target.of(new Requirement.ClearsNet(0), place, Requirement.NotAttackable.AT_THE_LINE),
        new Conditions(Ball.OUTDOOR, Air.of(25, 50, Air.SEA_LEVEL_PA), Wind.constant(-3, 1)));
  }

  private static void time(String name, double level, Supplier<Double> question) {
    double[] seconds = new double[RUNS];
    double sum = 0;
    for (int run = -RUNS; run < RUNS; run++) {
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      sum += question.get();
      if (run >= 0) {
        long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        seconds[run] = (end - start) / 1e9;
      }
    }
    Arrays.sort(seconds);
    if (Double.isNaN(sum)) {
      throw new IllegalStateException("An answer is no number.");
    }
    System.out.printf(
        Locale.ROOT,
        "| %s | %s | %.1f |%n",
        name,
        level > 0 ? level : "",
        1000 * seconds[RUNS / 2]);
  }

  private static void compare(Shot shot, double level, double bearing) {
    Scatter scatter = Scatter.ofLevel(level);
    BestAim best = AimSearch.of(shot, scatter).near(bearing).orElseThrow();
    SplittableRandom random = new SplittableRandom(11);
    ShotTrial trial = shot.trial();
    int in = 0;
    for (int i = 0; i < SIMULATED; i++) {
      double speed = best.aim().speed() * (1 + scatter.speed() * random.nextGaussian());
      double up = best.aim().elevation() + scatter.elevation() * random.nextGaussian();
      double side = best.aim().bearing() + scatter.bearing() * random.nextGaussian();
      in += trial.margin(speed, up, side) > 0 ? 1 : 0;
    }
    double simulated = (double) in / SIMULATED;
    double error = Math.sqrt(simulated * (1 - simulated) / SIMULATED);
    System.out.printf(
        Locale.ROOT,
        "| %s | %.4f | %.4f | %.4f | %.4f | %.4f |%n",
        level,
        best.chance(),
        simulated,
        error,
        Math.abs(best.chance() - simulated),
        1e-3 + 3 * error);
  }
}
