package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;

class LaplaceFitTest {
  private static final double PRIOR_SD = 4;

  /** A score of which the rallies are not known, with both chances free. */
  private static final Term SCORE =
      new Term(
          new ChainLikelihood(
              new ScorePath(
                  ScorePath.Counting.SERVER_ONLY,
                  Score.LOVE_ALL,
                  Score.of(11, 7),
                  Goal.firstTo(11),
                  ScorePath.Ending.FINISHED,
                  ScorePath.FirstServer.A)),
          new SparseRow().plus(0, 1),
          new SparseRow().plus(1, 1));

  private static GaussianPrior prior() {
    BlockMatrix precision = new BlockMatrix(new BlockGraph(new int[] {2}));
    precision.add(0, 0, 1 / (PRIOR_SD * PRIOR_SD));
    precision.add(1, 1, 1 / (PRIOR_SD * PRIOR_SD));
    return GaussianPrior.of(new double[2], precision);
  }

  /** Whether the negative Hessian of the log posterior has a direction that bends upward. */
  private static boolean bendsUpward(double etaA, double etaB) {
    Likelihood.Curve curve = SCORE.at(new double[] {etaA, etaB});
    double first = 1 / (PRIOR_SD * PRIOR_SD) - curve.d11();
    double second = 1 / (PRIOR_SD * PRIOR_SD) - curve.d22();
    return first * second - curve.d12() * curve.d12() < 0 || first < 0;
  }

  @ParameterizedTest
  @CsvSource({"6, -6", "-6, 6", "5, -2", "-2, 5"})
  void mode_fromAStartWhereThePosteriorBendsUpward_isTheSame(double etaA, double etaB) {
    assertThat(bendsUpward(etaA, etaB)).isTrue();
    double[] expected = LaplaceFit.of(prior(), List.of(SCORE)).mode();
    double[] found = LaplaceFit.from(new double[] {etaA, etaB}, prior(), List.of(SCORE)).mode();
    assertThat(found).containsExactly(expected, within(1e-7));
    assertThat(bendsUpward(found[0], found[1])).isFalse();
  }
}
