package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import rallywright.engine.odds.FairGame.HeadStart;

/**
 * Finds a rotation.
 *
 * <p>What it weighs, in this order: sit-outs even and not twice running, pairs that keep apart or
 * together, new partners (mates of a lane), new opponents and even matches. The first is never
 * given up for another.
 *
 * <p>For the maintainer: a portfolio of runs. Where a whist design fits, every third run starts
 * from it, its labels given to players so that matches are even; the others start from the bench
 * All runs anneal, some from a high and some from a low temperature, and the best result is kept. A
 * run ends early when the counting bound is reached. Moves are counted, not seconds: the same wish
 * gives the same rotation unless the watch stops it.
 */
public final class RotationSearch {

  private final RotationWish wish;
  private final RotationProblem problem;
  private final SearchEffort effort;
  private final SearchWatch watch;
  private final UnevenMatches uneven;
  private int[][] best;
  private long bestCost = Long.MAX_VALUE;

  private RotationSearch(RotationWish wish, SearchEffort effort, SearchWatch watch) {
    this.wish = wish;
    this.effort = effort;
    this.watch = watch;
    problem = new RotationProblem(wish);
    uneven = new UnevenMatches(wish.format());
    best = BenchQueue.lines(problem, IntStream.range(0, problem.players()).toArray());
  }

  /**
   * A rotation, with the usual effort.
   *
   * @param wish what is asked for
   * @return the rotation, or what is impossible
   */
  public static RotationAnswer find(RotationWish wish) {
    return find(wish, SearchEffort.USUAL, SearchWatch.PATIENT);
  }

  /**
   * A rotation.
   *
   * @param wish what is asked for
   * @param effort how long to search
   * @param watch sees how the search comes on and may stop it
   * @return the rotation, or what is impossible
   */
  public static RotationAnswer find(RotationWish wish, SearchEffort effort, SearchWatch watch) {
    List<String> problems = RotationCheck.problems(wish);
    if (!problems.isEmpty()) {
      return new RotationAnswer.Refused(problems);
    }
    RotationSearch search = new RotationSearch(wish, effort, watch);
    search.run();
    return new RotationAnswer.Found(search.schedule(search.best));
  }

  /**
   * The cost of a rotation, for comparisons.
   *
   * @param wish what is asked for
   * @param rounds its rounds, all of them
   * @return the cost in points, 0 or more where no pair keeps together
   */
  public static double cost(RotationWish wish, List<RotationRound> rounds) {
    RotationProblem whole = new RotationProblem(wish.withPlayed(rounds));
    return (double) WholeCost.of(whole, whole.keptLines()).total() / RotationCost.POINT;
  }

  private void run() {
    SplittableRandom dice = new SplittableRandom(wish.seed());
    Optional<WhistStart> whist = WhistStart.of(problem);
    for (int run = 0; run < effort.runs(); run++) {
      SplittableRandom own = dice.split();
      boolean fromDesign = whist.isPresent() && run % 3 == 0;
      int[][] start =
          fromDesign
              ? whist.get().lines(own, effort.moves())
              : BenchQueue.lines(problem, shuffled(own));
      Annealing annealing = new Annealing(problem, start, own);
      int before = run;
      boolean free =
          annealing.run(
              effort.moves(),
              cooling(run, fromDesign),
              moves -> {
                keep(annealing);
                return goesOn(before + (double) moves / effort.moves());
              });
      keep(annealing);
      if (!free || annealing.isDone()) {
        return;
      }
    }
  }

  private Annealing.Cooling cooling(int run, boolean fromDesign) {
    if (fromDesign) {
      return Annealing.Cooling.FROM_A_DESIGN;
    }
    return run % 3 == 2 && problem.hasStrengths()
        ? Annealing.Cooling.FINE
        : Annealing.Cooling.FROM_ANYWHERE;
  }

  private void keep(Annealing annealing) {
    if (annealing.best() < bestCost) {
      bestCost = annealing.best();
      best = annealing.bestLines();
    }
  }

  private boolean goesOn(double runs) {
    int[][] soFar = best;
    double points = (double) bestCost / RotationCost.POINT;
    SearchProgress progress =
        new SearchProgress(runs / effort.runs(), points, () -> schedule(soFar));
    return watch.after(progress) == SearchWatch.Verdict.GO_ON;
  }

  private int[] shuffled(SplittableRandom dice) {
    int[] order = IntStream.range(0, problem.players()).toArray();
    for (int place = order.length - 1; place > 0; place--) {
      int other = dice.nextInt(place + 1);
      int kept = order[place];
      order[place] = order[other];
      order[other] = kept;
    }
    return order;
  }

  private RotationSchedule schedule(int[][] found) {
    int[][] lines = EvenSides.of(problem, found);
    List<RotationRound> rounds = new ArrayList<>(problem.keptRounds());
    for (int round = problem.kept(); round < lines.length; round++) {
      rounds.add(round(round, lines[round]));
    }
    return new RotationSchedule(rounds, RotationMeasures.of(wish, rounds));
  }

  private RotationRound round(int round, int[] line) {
    RotationGame game = wish.game();
    List<RotationMatch> matches = new ArrayList<>();
    for (int group = 0; group < problem.groups(round); group++) {
      matches.add(match(line, group, game));
    }
    List<Integer> sitting = IntStream.of(line).skip(problem.seats(round)).sorted().boxed().toList();
    return new RotationRound(round + 1, matches, sitting.stream().map(problem::idOf).toList());
  }

  private RotationMatch match(int[] line, int group, RotationGame game) {
    int first = group * game.size();
    int half =
        game.form() == RotationGame.Form.PAIRS || game.size() == 2 ? game.size() / 2 : game.size();
    List<Integer> a = IntStream.range(first, first + half).mapToObj(seat -> line[seat]).toList();
    List<Integer> b =
        IntStream.range(first + half, first + game.size()).mapToObj(seat -> line[seat]).toList();
    HeadStart headStart = uneven.headStart(UnevenMatches.difference(strengths(a), strengths(b)));
    return new RotationMatch(
        group / game.perCourt() + 1,
        group % game.perCourt() + 1,
        a.stream().map(problem::idOf).toList(),
        b.stream().map(problem::idOf).toList(),
        headStart);
  }

  private List<Double> strengths(List<Integer> players) {
    return players.stream().map(place -> wish.players().get(place).strengthLogits()).toList();
  }
}
