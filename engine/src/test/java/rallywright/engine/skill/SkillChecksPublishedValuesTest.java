package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
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

  /** One line of a check file beside what the model says. */
  private record Line(Estimate mode, Estimate estimate, JsonNode expected, int skill) {
    double expect(String name) {
      JsonNode node = expected.get(name);
      return (skill >= 0 ? node.get(skill) : node).asDouble();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {STATIC, WEEKS, CLUB, FORMATS})
  void modes_ofCheckFile_areThoseOfTheIndependentProgram(String name) throws Exception {
    List<Line> lines = lines(CheckFile.read(name));
    assertThat(lines).hasSizeGreaterThanOrEqualTo(20);
    for (Line line : lines) {
      assertThat(line.mode.mean()).isCloseTo(line.expect("mode"), within(1e-6));
      assertThat(line.mode.sd()).isCloseTo(line.expect("modeSd"), within(1e-5));
      assertThat(line.estimate.sd()).isCloseTo(line.expect("modeSd"), within(1e-5));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {STATIC, WEEKS, CLUB, FORMATS})
  void means_ofCheckFile_lieNearTheSampler(String name) throws Exception {
    for (Line line : lines(CheckFile.read(name))) {
      assertThat(line.estimate.mean()).isCloseTo(line.expect("mean"), within(0.02));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {STATIC, WEEKS, CLUB, FORMATS})
  void means_withSkewnessCorrection_lieNearerToTheSamplerThanModes(String name) throws Exception {
    double ofMeans = 0;
    double ofModes = 0;
    for (Line line : lines(CheckFile.read(name))) {
      ofMeans += Math.pow(line.estimate.mean() - line.expect("mean"), 2);
      ofModes += Math.pow(line.mode.mean() - line.expect("mean"), 2);
    }
    assertThat(ofMeans).isLessThan(0.25 * ofModes);
  }

  @ParameterizedTest
  @ValueSource(strings = {STATIC, WEEKS, CLUB, FORMATS})
  void logEvidence_ofCheckFile_isThatOfTheIndependentProgram(String name) throws Exception {
    CheckFile file = CheckFile.read(name);
    assertThat(file.fit().logEvidence())
        .isCloseTo(file.root.get("logEvidenceLaplace").asDouble(), within(1e-6));
  }

  private static List<Line> lines(CheckFile file) {
    Posterior posterior = file.fit();
    List<Line> lines = new ArrayList<>();
    for (JsonNode expected : file.root.get("posterior")) {
      for (int skill = 0; skill < file.club.skills().skills(); skill++) {
        SkillSum.Key key =
            new SkillSum.Key(expected.get("player").asInt(), skill, expected.get("week").asInt());
        lines.add(
            new Line(posterior.mode(SkillSum.skill(key)), posterior.skill(key), expected, skill));
      }
    }
    int effect = 0;
    for (JsonNode expected : file.root.path("drillEffects")) {
      lines.add(
          new Line(
              posterior.mode(SkillSum.effect(effect)), posterior.effect(effect), expected, -1));
      effect++;
    }
    return lines;
  }
}
