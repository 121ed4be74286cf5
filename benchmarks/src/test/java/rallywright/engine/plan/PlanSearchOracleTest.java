package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** The search beside the optimum that an independent solver proves. */
class PlanSearchOracleTest {

  /** The oracle counts to the second and rounds in its own favour. */
  private static final double ROUNDING = 0.002;

  @ParameterizedTest
  @CsvSource({"3,1", "3,3", "3,7", "4,1", "4,2", "4,6", "12,5", "12,8", "12,14", "12,41"})
  void search_onASmallSession_reachesTheProvenOptimum(int drills, long seed) {
    OracleCase found = OracleCase.of(drills, seed, 60);
    assertThat(found.oracle().proven()).isTrue();
    assertThat(found.gap()).isBetween(-ROUNDING, 0.01);
    assertThat(found.relaxed()).isGreaterThanOrEqualTo(found.found());
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/oracle/optima.csv", numLinesToSkip = 1)
  void search_onAStoredSession_reachesItsOptimum(int drills, long seed, double optimum) {
    PlanProblem problem = RandomProblems.of(drills, seed);
    SearchModel model = OracleCase.model(problem);
    double found = OracleCase.score(model, new SearchRules(model), problem.wish().seed());
    assertThat(found).isLessThanOrEqualTo(optimum * (1 + ROUNDING));
    assertThat(found).isCloseTo(optimum, within(0.02 * optimum));
  }
}
