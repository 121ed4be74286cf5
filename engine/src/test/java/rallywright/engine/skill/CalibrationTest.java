package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Simulation-based calibration (Talts et al. 2018, arXiv:1804.06788) in the small: clubs drawn from
 * the prior with fixed seeds, of which each interval must cover about the share it says.
 */
class CalibrationTest {
  private static final int CLUBS = 400;
  private static final int PLAYERS = 5;
  private static final int WEEKS = 3;
  private static final double[] SHARES = {0.5, 0.8, 0.9, 0.95};

  /** Two-sided quantiles of the standard normal for the shares. */
  private static final double[] SDS = {0.6744897502, 1.2815515655, 1.6448536270, 1.9599639845};

  @Test
  void intervals_ofClubsDrawnFromThePrior_coverWhatTheySay() {
    int[] covered = new int[SHARES.length];
    int seen = 0;
    double sumOfErrors = 0;
    for (int seed = 0; seed < CLUBS; seed++) {
      SimulatedClub club =
          new SimulatedClub(SimulatedClub.Size.small(PLAYERS, WEEKS, 12), 1000 + seed);
      Posterior posterior =
          SkillModel.of(club.club, SimulatedClub.PRIOR).fit(club.evidence, club.weeks);
      for (int player = 0; player < PLAYERS; player++) {
        for (int skill = 0; skill < club.club.skills().skills(); skill++) {
          SkillSum.Key key = new SkillSum.Key(player, skill, WEEKS - 1);
          Estimate estimate = posterior.skill(key);
          double error = (club.skill(key) - estimate.mean()) / estimate.sd();
          for (int i = 0; i < SHARES.length; i++) {
            covered[i] += Math.abs(error) < SDS[i] ? 1 : 0;
          }
          sumOfErrors += error;
          seen++;
        }
      }
    }
    for (int i = 0; i < SHARES.length; i++) {
      assertThat(covered[i] / (double) seen).isCloseTo(SHARES[i], within(0.02));
    }
    assertThat(sumOfErrors / seen).isCloseTo(0, within(0.1));
  }
}
