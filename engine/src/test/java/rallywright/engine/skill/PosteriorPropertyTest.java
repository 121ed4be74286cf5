package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The sparse fit against a dense one that is written from the definition alone. */
class PosteriorPropertyTest {

  @Property(tries = 6)
  void posterior_ofARandomClub_isThatOfTheDenseDefinition(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 3) int players) {
    SimulatedClub club = new SimulatedClub(SimulatedClub.Size.small(players, 2, 4), seed);
    Posterior posterior =
        SkillModel.of(club.club, SimulatedClub.PRIOR).fit(club.evidence, club.weeks);
    DensePosterior dense = new DensePosterior(club, 2);
    double[] mode = dense.modes(posterior);
    double[] gradient = dense.gradient(mode);
    double[][] covariance = DensePosterior.inverse(dense.negativeHessian(mode));
    for (int i = 0; i < mode.length; i++) {
      assertThat(gradient[i]).as("slope at the mode").isCloseTo(0, within(1e-6));
      assertThat(posterior.mode(dense.sum(i)).sd())
          .isCloseTo(Math.sqrt(covariance[i][i]), within(1e-5));
      for (int j = 0; j < mode.length; j += 5) {
        assertThat(posterior.covariance(dense.sum(i), dense.sum(j)))
            .isCloseTo(covariance[i][j], within(1e-5));
      }
    }
    double logDet = DensePosterior.logDet(dense.negativeHessian(mode));
    double evidence =
        dense.logPosterior(mode) + mode.length / 2.0 * Math.log(2 * Math.PI) - logDet / 2;
    assertThat(posterior.logEvidence()).isCloseTo(evidence, within(1e-4));
  }
}
