package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The random walk of one skill, measured with a normal error, is the local level model: filter and
 * smoother of the Nile's flow (published/nile/README.md) by the walk and the fit of the skill
 * model.
 */
class LocalLevelPublishedValuesTest {
  private static final double OBSERVATION = 15099;
  private static final double LEVEL = 1469.1;

  /** So wide that the start says nothing: its share of the first estimate is 1.5e-10. */
  private static final double DIFFUSE_SD = 1e7;

  /** The level after the measurements of the first so many years. */
  private static final class Level {
    private final Layout layout;
    private final LaplaceFit fit;

    private Level(int years, double observation, double level) throws Exception {
      SkillPrior prior = new SkillPrior(DIFFUSE_SD, 0, 1e-3, Math.sqrt(level), 0, 0);
      Club club = new Club(new SkillGroups(List.of(0)), List.of(Entrant.atLevel(3.5)), List.of());
      Set<Integer> weeks = IntStream.rangeClosed(0, years).boxed().collect(Collectors.toSet());
      GroupRecord record = new GroupRecord(club, List.of(0), List.of(), weeks);
      layout = Layout.of(record, Border.of(club));
      List<Term> terms = new ArrayList<>();
      List<String[]> flows = PublishedRows.of("nile/flow.csv");
      for (int year = 0; year < years; year++) {
        double flow = Double.parseDouble(flows.get(year)[1]);
        terms.add(new Term(new NormalLikelihood(flow, observation), row(year)));
      }
      fit = LaplaceFit.of(new WalkPrior(layout, prior), terms);
    }

    private SparseRow row(int year) {
      SparseRow row = new SparseRow();
      layout.addSkill(row, new SkillSum.Key(0, 0, year), 1);
      return row;
    }

    private double mean(int year) {
      return row(year).dot(fit.mode());
    }

    private double variance(int year) {
      return row(year).dot(fit.factor().solve(row(year).dense(layout.graph().latents())));
    }
  }

  @Test
  void filterAndSmoother_ofTheNile_areThePublishedOnes() throws Exception {
    Level all = new Level(100, OBSERVATION, LEVEL);
    List<String[]> rows = PublishedRows.of("nile/expected.csv");
    assertThat(rows).hasSize(11);
    for (String[] row : rows) {
      int t = Integer.parseInt(row[0]);
      Level until = new Level(t, OBSERVATION, LEVEL);
      assertThat(until.mean(t - 1)).isCloseTo(Double.parseDouble(row[1]), within(1e-5));
      assertThat(until.variance(t - 1)).isCloseTo(Double.parseDouble(row[2]), within(1e-4));
      assertThat(all.mean(t - 1)).isCloseTo(Double.parseDouble(row[3]), within(1e-5));
      assertThat(all.variance(t - 1)).isCloseTo(Double.parseDouble(row[4]), within(1e-4));
    }
  }

  @Test
  void smoothedLevels_ofAllHundredYears_areThePublishedOnes() throws Exception {
    Level all = new Level(100, OBSERVATION, LEVEL);
    List<String[]> rows = PublishedRows.of("nile/smoothed.csv");
    assertThat(rows).hasSize(100);
    for (String[] row : rows) {
      int t = Integer.parseInt(row[0]);
      assertThat(all.mean(t - 1)).isCloseTo(Double.parseDouble(row[1]), within(6e-5));
    }
  }

  @Test
  void forecast_for1971_isThePublishedOne() throws Exception {
    Level all = new Level(100, OBSERVATION, LEVEL);
    assertThat(all.mean(100)).isCloseTo(798.370293, within(1e-5));
    assertThat(all.variance(100)).isCloseTo(5501.257942, within(1e-4));
  }

  @Test
  void logEvidence_atTheMaximum_isThePublishedLikelihood() throws Exception {
    double observation = 15098.517901;
    Level all = new Level(100, observation, 1469.177356);
    double first = DIFFUSE_SD * DIFFUSE_SD + observation;
    double ofFirst = -Math.log(2 * Math.PI * first) / 2 - 1120.0 * 1120.0 / (2 * first);
    assertThat(all.fit.logEvidence() - ofFirst).isCloseTo(-632.54562510, within(1e-5));
  }
}
