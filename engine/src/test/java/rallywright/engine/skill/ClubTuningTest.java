package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Hyper-parameters by marginal likelihood, on clubs drawn with a seed. */
class ClubTuningTest {
  private static final double STEP = 1e-4;

  @Test
  void slope_ofTheEvidence_isItsDifferenceQuotient() {
    SimulatedClub club = new SimulatedClub(SimulatedClub.Size.small(4, 4, 10), 5);
    ClubTuning tuning = ClubTuning.within(club.club, club.evidence, HyperParameters.DEFAULT);
    double[] at = HyperParameters.DEFAULT.logs();
    for (int i = 0; i < at.length; i++) {
      at[i] += 0.1 * (i - 3);
    }
    double[] slope = new double[at.length];
    tuning.objective(at, slope);
    double[] ignored = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      double[] up = at.clone();
      double[] down = at.clone();
      up[i] += STEP;
      down[i] -= STEP;
      double quotient =
          (tuning.objective(up, ignored) - tuning.objective(down, ignored)) / (2 * STEP);
      assertThat(slope[i]).as("parameter %d", i).isCloseTo(quotient, within(2e-4));
    }
  }

  @Test
  void clubWithFewGames_keepsTheUsualValues() {
    SimulatedClub club = new SimulatedClub(SimulatedClub.Size.small(3, 2, 5), 1);
    ClubTuning.Tuned tuned = ClubTuning.of(club.club, club.evidence, HyperParameters.DEFAULT);
    assertThat(tuned.basis()).isEqualTo(ClubTuning.Basis.USUAL_VALUES);
    assertThat(tuned.values()).isEqualTo(HyperParameters.DEFAULT);
    assertThat(tuned.rallies()).isBetween(50.0, 999.0);
  }

  @Test
  void tunedValues_areTheTopOfTheObjective_andLieNearerToTheTruthThanWrongOnes() {
    SimulatedClub club = new SimulatedClub(SimulatedClub.Size.small(14, 10, 60), 3);
    SkillPrior p = SimulatedClub.PRIOR;
    HyperParameters wrong =
        new HyperParameters(
            new SkillPrior(
                p.levelSd() * 1.6, p.groupSd(), p.skillSd(), p.weeklySd() * 2, 0.45, 0.4),
            1,
            1);
    ClubTuning.Tuned tuned = ClubTuning.of(club.club, club.evidence, wrong);
    assertThat(tuned.basis()).isEqualTo(ClubTuning.Basis.OWN_SCORES);
    double[] slope = new double[HyperParameters.COUNT];
    ClubTuning again = ClubTuning.within(club.club, club.evidence, wrong);
    again.objective(tuned.values().logs(), slope);
    for (double each : slope) {
      assertThat(each).isCloseTo(0, within(0.1));
    }
    double found = tuned.values().prior().weeklySd();
    assertThat(found).isLessThan(0.85 * 2 * p.weeklySd());
    assertThat(found).isGreaterThan(0.6 * p.weeklySd());
  }

  @Test
  void scales_multiplyTheSdsOfEffectsAndGains() {
    SimulatedClub club = new SimulatedClub(SimulatedClub.Size.small(2, 1, 1), 1);
    Club scaled = new HyperParameters(SkillPrior.DEFAULT, 2, 0.5).applyTo(club.club);
    assertThat(scaled.effects().get(0).sd()).isCloseTo(0.8, within(1e-12));
    assertThat(scaled.gains().get(0).sd()).isCloseTo(0.01, within(1e-12));
    assertThat(scaled.gains().get(0).mean()).isEqualTo(club.club.gains().get(0).mean());
  }
}
