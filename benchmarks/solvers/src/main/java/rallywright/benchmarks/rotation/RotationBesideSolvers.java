package rallywright.benchmarks.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.RotationAnswer;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationPlayer;
import rallywright.engine.rotation.RotationRound;
import rallywright.engine.rotation.RotationSchedule;
import rallywright.engine.rotation.RotationSearch;
import rallywright.engine.rotation.RotationWish;
import rallywright.engine.rotation.SearchEffort;
import rallywright.engine.rotation.SearchWatch;

/**
 * The cost of the rotations that three searches find in equal processor time, and that the solvers
 * find in ten times as much: doubles, everybody plays, strengths drawn by a fixed seed. Then the
 * time of planning anew with the usual effort.
 */
public final class RotationBesideSolvers {

  private static final int MANY = 10;

  private RotationBesideSolvers() {}

  /** Players and rounds of one case. */
  private record Case(int players, int rounds) {}

  /**
   * Prints the tables.
   *
   * @param arguments the seconds of processor time for each search
   */
  public static void main(String[] arguments) {
    double seconds = Double.parseDouble(arguments[0]);
    System.out.printf(
        Locale.ROOT,
        "| players | rounds | own, %.0f s | CP-SAT, %.0f s | Timefold, %.0f s | CP-SAT, %.0f s |"
            + " Timefold, %.0f s |%n",
        seconds,
        seconds,
        seconds,
        MANY * seconds,
        MANY * seconds);
    System.out.println("| ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
    own(wish(new Case(8, 4)), new Budget(seconds));
    List<Case> cases =
        List.of(new Case(8, 7), new Case(12, 8), new Case(16, 8), new Case(24, 8), new Case(32, 8));
    for (Case each : cases) {
      row(each, seconds);
    }
    System.out.println();
    System.out.println("| players | courts | rounds | played | planned anew, ms |");
    System.out.println("| ---: | ---: | ---: | ---: | ---: |");
    anew(13, 3, 12);
    anew(32, 8, 12);
    anew(40, 6, 14);
    anew(39, 9, 12);
  }

  private static void row(Case each, double seconds) {
    RotationWish wish = wish(each);
    List<String> cells = new ArrayList<>();
    cells.add(measured(wish, seconds, budget -> Optional.of(own(wish, budget))));
    for (double budget : new double[] {seconds, MANY * seconds}) {
      cells.add(measured(wish, budget, given -> CpSatRotation.solve(wish, given)));
      cells.add(measured(wish, budget, given -> Optional.of(TimefoldRotation.solve(wish, given))));
    }
    System.out.printf(
        "| %d | %d | %s |%n", each.players(), each.rounds(), String.join(" | ", cells));
  }

  private static String measured(
      RotationWish wish, double seconds, Function<Budget, Optional<List<RotationRound>>> search) {
    Budget budget = new Budget(seconds);
    Optional<List<RotationRound>> found = search.apply(budget);
    double spent = budget.spent();
    String cost =
        found
            .map(rounds -> String.format(Locale.ROOT, "%.0f", RotationSearch.cost(wish, rounds)))
            .orElse("none");
    boolean off = spent > 1.2 * seconds || spent < 0.5 * seconds;
    return off ? String.format(Locale.ROOT, "%s (%.1f s)", cost, spent) : cost;
  }

  private static List<RotationRound> own(RotationWish wish, Budget budget) {
    RotationAnswer answer =
        RotationSearch.find(
            wish,
            new SearchEffort(6, 4_000_000),
            progress -> budget.isUsedUp() ? SearchWatch.Verdict.STOP : SearchWatch.Verdict.GO_ON);
    return ((RotationAnswer.Found) answer).schedule().rounds();
  }

  private static RotationWish wish(Case each) {
    return RotationWish.of(
        RotationGame.DOUBLES, each.players() / 4, each.rounds(), players(each.players()));
  }

  private static List<RotationPlayer> players(int count) {
    SplittableRandom dice = new SplittableRandom(count);
    List<RotationPlayer> players = new ArrayList<>();
    for (int place = 0; place < count; place++) {
      players.add(RotationPlayer.of(new PlayerId("p" + place), 3 * (dice.nextDouble() - 0.5)));
    }
    return players;
  }

  private static void anew(int count, int courts, int rounds) {
    RotationWish wish = RotationWish.of(RotationGame.DOUBLES, courts, rounds, players(count));
    RotationSchedule first = ((RotationAnswer.Found) RotationSearch.find(wish)).schedule();
    RotationWish changed =
        wish.withPlayed(first.rounds().subList(0, 4)).leaving(new PlayerId("p1"), 4);
    long start = System.nanoTime();
    RotationSearch.find(changed);
    System.out.printf(
        Locale.ROOT,
        "| %d | %d | %d | 4 | %.0f |%n",
        count,
        courts,
        rounds,
        (System.nanoTime() - start) / 1e6);
  }
}
