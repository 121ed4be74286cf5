package rallywright.engine.flight;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * How often the search for the best aim ends on the wrong hill: random shots, climbed from one to
 * eight tops of the rough look; the best of all is taken for the truth.
 */
final class AimHills {

  private static final int SHOTS = 100;
  private static final int[] CLIMBS = {1, 2, 3, 4, 8};
  private static final double MISSED = 0.003;

  private final SplittableRandom random = new SplittableRandom(7);
  private final double[] worst = new double[CLIMBS.length];
  private final double[] millis = new double[CLIMBS.length];
  private final int[] missed = new int[CLIMBS.length];
  private int shots;

  private AimHills() {}

  static void print() {
    AimHills hills = new AimHills();
    for (int i = 0; i < SHOTS; i++) {
      hills.climb();
    }
    System.out.println();
    System.out.println("| climbs | shots | off by more than 0.003 | worst | mean, ms |");
    System.out.println("| ---: | ---: | ---: | ---: | ---: |");
    for (int k = 0; k < CLIMBS.length; k++) {
      System.out.printf(
          Locale.ROOT,
          "| %d | %d | %d | %.5f | %.0f |%n",
          CLIMBS[k],
          hills.shots,
          hills.missed[k],
          hills.worst[k],
          hills.millis[k] / hills.shots);
    }
  }

  /** A soft shot into a lane of the kitchen, or a deep one, from anywhere in any wind. */
  private void climb() {
    boolean deep = random.nextInt(4) == 0;
    double right = between(-3, 0);
    Requirement.LandsIn place =
        deep
            ? new Requirement.LandsIn(4, 6.7, right, right + 3)
            : new Requirement.LandsIn(0, 2.13, right, right + 3);
    List<Requirement> asked = new ArrayList<>(List.of(new Requirement.ClearsNet(0), place));
    if (!deep) {
      asked.add(Requirement.NotAttackable.AT_THE_LINE);
    }
    if (random.nextBoolean()) {
      asked.add(new Requirement.StaysBelow(2));
    }
    Vector contact = new Vector(between(-6.7, -2), between(-3, 3), between(0.4, 1.2));
    Conditions conditions =
        new Conditions(
            Ball.OUTDOOR,
            Air.of(25, 50, Air.SEA_LEVEL_PA),
            Wind.constant(between(-6, 6), between(-4, 4)));
    Shot shot = new Shot(contact, between(-150, 150), new Target(asked), conditions);
    double bearing = Math.atan2(right + 1.5 - contact.y(), (deep ? 5.5 : 1.2) - contact.x());
    count(shot, Scatter.ofLevel(between(2.5, 5)), bearing);
  }

  private double between(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  private void count(Shot shot, Scatter scatter, double bearing) {
    double[] chances = new double[CLIMBS.length];
    for (int k = 0; k < CLIMBS.length; k++) {
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      Optional<BestAim> best = AimSearch.of(shot, scatter).withClimbs(CLIMBS[k]).near(bearing);
      if (best.isEmpty()) {
        return;
      }
      chances[k] = best.get().chance();
      millis[k] += (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
    }
    shots++;
    double top = Arrays.stream(chances).max().orElse(0);
    for (int k = 0; k < CLIMBS.length; k++) {
      worst[k] = Math.max(worst[k], top - chances[k]);
      missed[k] += top - chances[k] > MISSED ? 1 : 0;
    }
  }
}
