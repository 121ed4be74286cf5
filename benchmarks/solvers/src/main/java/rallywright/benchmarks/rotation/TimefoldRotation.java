package rallywright.benchmarks.rotation;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.SwapMoveSelectorConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchType;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import rallywright.engine.rotation.RotationRound;
import rallywright.engine.rotation.RotationWish;

/**
 * A local-search model of a doubles rotation in which everybody plays: swaps of two seats of a
 * round, late acceptance, an incremental score.
 */
final class TimefoldRotation {

  private static final long FAR_LONGER_SECONDS = 3600;

  private TimefoldRotation() {}

  static List<RotationRound> solve(RotationWish wish, Budget budget) {
    SolverConfig config =
        new SolverConfig()
            .withSolutionClass(Tables.class)
            .withEntityClasses(Seat.class)
            .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
            .withRandomSeed(1L)
            .withScoreDirectorFactory(
                new ScoreDirectorFactoryConfig()
                    .withIncrementalScoreCalculatorClass(TablesScore.class))
            .withPhases(
                new LocalSearchPhaseConfig()
                    .withLocalSearchType(LocalSearchType.LATE_ACCEPTANCE)
                    .withMoveSelectorConfig(
                        new SwapMoveSelectorConfig().withFilterClass(SameRound.class)))
            .withTerminationConfig(
                new TerminationConfig().withSecondsSpentLimit(FAR_LONGER_SECONDS));
    Solver<Tables> solver = SolverFactory.<Tables>create(config).buildSolver();
    budget.whenUsedUp(solver::terminateEarly);
    Tables solved = solver.solve(start(wish));
    int[][] lines = new int[wish.rounds()][wish.players().size()];
    for (Seat seat : solved.seats()) {
      lines[seat.round()][seat.place()] = Objects.requireNonNull(seat.getPlayer());
    }
    return Weights.rounds(wish, lines);
  }

  private static Tables start(RotationWish wish) {
    int players = wish.players().size();
    long[] millilogits = new long[players];
    for (int player = 0; player < players; player++) {
      millilogits[player] = Weights.millilogits(wish, player);
    }
    List<Seat> seats = new ArrayList<>();
    for (int round = 0; round < wish.rounds(); round++) {
      for (int place = 0; place < players; place++) {
        seats.add(new Seat(seats.size(), round, place, place));
      }
    }
    return new Tables(wish.rounds(), millilogits, seats);
  }
}
