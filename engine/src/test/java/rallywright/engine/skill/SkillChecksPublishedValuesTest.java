package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/**
 * Posteriors of an independent program (published/skill-checks/README.md): modes and their SDs by
 * Newton, means by an elliptical slice sampler.
 */
class SkillChecksPublishedValuesTest {
  private static final String STATIC = "skill-1-static.json";
  private static final String WEEKS = "skill-2-weeks.json";
  private static final String CLUB = "skill-3-club.json";
  private static final String FORMATS = "skill-4-formats.json";

  @ParameterizedTest
  @ValueSource(strings = {STATIC, WEEKS, CLUB, FORMATS})
  void skills_ofCheckFile_areThoseOfTheIndependentProgram(String name) throws Exception {
    CheckFile file = CheckFile.read(name);
    Posterior posterior = file.fit();
    int seen = 0;
    double worst = 0, worstSd = 0, sumMode = 0, sumMean = 0, worstMean = 0;
    for (JsonNode expected : file.root.get("posterior")) {
      for (int skill = 0; skill < file.club.skills().skills(); skill++) {
        SkillSum.Key key =
            new SkillSum.Key(expected.get("player").asInt(), skill, expected.get("week").asInt());
        Estimate mode = posterior.mode(SkillSum.skill(key));
        double em = expected.get("mode").get(skill).asDouble();
        double mean = expected.get("mean").get(skill).asDouble();
        worst = Math.max(worst, Math.abs(mode.mean() - em));
        worstSd =
            Math.max(
                worstSd,
                Math.abs(posterior.skill(key).sd() - expected.get("modeSd").get(skill).asDouble()));
        worstMean = Math.max(worstMean, Math.abs(posterior.skill(key).mean() - mean));
        sumMode += Math.pow(em - mean, 2);
        sumMean += Math.pow(posterior.skill(key).mean() - mean, 2);
        assertThat(mode.mean()).isCloseTo(em, within(1e-6));
        assertThat(mode.sd()).isCloseTo(expected.get("modeSd").get(skill).asDouble(), within(1e-5));
        seen++;
      }
    }
    System.out.println(
        name
            + " mode "
            + worst
            + " sd "
            + worstSd
            + " rms mode-mean "
            + Math.sqrt(sumMode / seen)
            + " rms corrected "
            + Math.sqrt(sumMean / seen)
            + " max "
            + worstMean
            + " ev "
            + (posterior.logEvidence() - file.root.get("logEvidenceLaplace").asDouble()));
    assertThat(seen).isGreaterThan(10);
  }
}
