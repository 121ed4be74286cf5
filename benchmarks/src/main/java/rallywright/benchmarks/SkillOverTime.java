package rallywright.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import rallywright.engine.drill.Skill;
import rallywright.engine.skill.Evidence;
import rallywright.engine.skill.Game;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.RalliesWon;
import rallywright.engine.skill.SkillModel;
import rallywright.engine.skill.SkillPrior;
import rallywright.engine.skill.SkillSum;

/**
 * What the skill model costs: against games, against players, and for the update after a session.
 * Cost is the processor time of the whole process, both cores together, so that other work on the
 * machine does not count; the memory is what is in use after a collection.
 */
public final class SkillOverTime {
  private static final int WEEKS = 52;
  private static final double GUESTS = 0.05;
  private static final int LARGEST_CLUB = 1000;
  private static final int LARGEST_RALLIES = 1_000_000;
  private static final int SESSIONS = 16;
  private static final double NANOS = 1e9;

  private SkillOverTime() {}

  /**
   * Prints the tables.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    cost(new BigClub(new BigClub.Size(64, WEEKS, 64_000, GUESTS), 1)); // warms up
    System.out.println("| players | games | rallies | processor s | wall s | MB |");
    System.out.println("| ---: | ---: | ---: | ---: | ---: | ---: |");
    for (int share = 8; share > 1; share /= 2) {
      cost(new BigClub.Size(LARGEST_CLUB / share, WEEKS, LARGEST_RALLIES / share, GUESTS));
    }
    for (int share = 8; share > 1; share /= 2) {
      cost(new BigClub.Size(LARGEST_CLUB / 4, WEEKS, LARGEST_RALLIES / share, GUESTS));
    }
    updates();
  }

  private static void cost(BigClub.Size size) {
    System.out.println(cost(new BigClub(size, 1)));
  }

  private static String cost(BigClub club) {
    List<Evidence> season = club.season();
    Timed<Posterior> fit = Timed.of(() -> read(fitted(club, season), club, 0));
    return row(club, season, fit);
  }

  private static String row(BigClub club, List<Evidence> season, Timed<Posterior> fit) {
    return String.format(
        Locale.ROOT,
        "| %d | %d | %d | %.2f | %.2f | %d |",
        club.club().entrants().size(),
        season.stream().filter(Game.class::isInstance).count(),
        season.stream().mapToInt(SkillOverTime::rallies).sum(),
        fit.processor,
        fit.wall,
        megabytes(fit.result));
  }

  private static int rallies(Evidence evidence) {
    return evidence instanceof Game game && game.result() instanceof RalliesWon won
        ? won.a() + won.b()
        : 0;
  }

  private static Posterior fitted(BigClub club, List<Evidence> season) {
    return SkillModel.of(club.club(), SkillPrior.DEFAULT).fit(season, Set.of());
  }

  /** Looks up every skill of a group in the week after the season, as its page would. */
  private static Posterior read(Posterior posterior, BigClub club, int group) {
    double sum = 0;
    for (int player : club.group(group)) {
      for (int skill = 0; skill < Skill.values().length; skill++) {
        sum += posterior.skill(new SkillSum.Key(player, skill, WEEKS)).sd();
      }
    }
    if (!(sum > 0)) {
      throw new IllegalStateException("The spreads are not numbers.");
    }
    return posterior;
  }

  private static void updates() {
    BigClub club = new BigClub(new BigClub.Size(LARGEST_CLUB, WEEKS, LARGEST_RALLIES, GUESTS), 1);
    List<Evidence> season = club.season();
    Timed<Posterior> fit = Timed.of(() -> read(fitted(club, season), club, 0));
    System.out.println(row(club, season, fit));
    SkillModel model = SkillModel.of(club.club(), SkillPrior.DEFAULT);
    double[][] first = sessions(club, model, fit.result);
    double[][] later = sessions(club, model, fit.result);
    System.out.printf(
        Locale.ROOT,
        "%nUpdate after a session, the group read after it, %d sessions of different groups:%n"
            + "first round (the virtual machine still compiles): processor %.2f s (median), %.2f s"
            + " (worst)%nsecond round: processor %.2f s (median), %.2f s (worst), wall %.2f s"
            + " (median)%nfull fit / update, second round: %.0f (median), %.0f (worst) in processor"
            + " time, %.0f (median) in wall time%n",
        SESSIONS,
        median(first[0]),
        worst(first[0]),
        median(later[0]),
        worst(later[0]),
        median(later[1]),
        fit.processor / median(later[0]),
        fit.processor / worst(later[0]),
        fit.wall / median(later[1]));
  }

  /** Processor and wall times of the update after one session of each of some groups. */
  private static double[][] sessions(BigClub club, SkillModel model, Posterior before) {
    double[][] times = new double[2][SESSIONS];
    for (int i = 0; i < SESSIONS; i++) {
      int group = i;
      List<Evidence> session = club.session(group, WEEKS);
      Timed<Posterior> update = Timed.of(() -> read(model.plus(before, session), club, group));
      times[0][i] = update.processor;
      times[1][i] = update.wall;
    }
    Arrays.sort(times[0]);
    Arrays.sort(times[1]);
    return times;
  }

  private static double median(double[] sorted) {
    return sorted[sorted.length / 2];
  }

  private static double worst(double[] sorted) {
    return sorted[sorted.length - 1];
  }

  private static long megabytes(Posterior inUse) {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    long used = runtime.totalMemory() - runtime.freeMemory();
    if (Double.isNaN(inUse.logEvidence())) {
      throw new IllegalStateException("The evidence is not a number.");
    }
    return used >> 20;
  }

  /** A result and what it cost, in seconds. */
  private static final class Timed<T> {
    private final T result;
    private final double processor;
    private final double wall;

    private Timed(T result, double processor, double wall) {
      this.result = result;
      this.processor = processor;
      this.wall = wall;
    }

    private static <T> Timed<T> of(Supplier<T> work) {
      OperatingSystemMXBean machine =
          ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
      long processor = machine.getProcessCpuTime();
      long wall = System.nanoTime();
      T result = work.get();
      return new Timed<>(
          result,
          (machine.getProcessCpuTime() - processor) / NANOS,
          (System.nanoTime() - wall) / NANOS);
    }
  }
}
