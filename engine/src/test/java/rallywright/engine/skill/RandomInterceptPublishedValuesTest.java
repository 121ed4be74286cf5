package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Logistic models with a random intercept (published/random-intercept/README.md) through the fit
 * and the search of the skill model.
 */
class RandomInterceptPublishedValuesTest {
  private static final int FIXED = 4;
  private static final double STEP = 1e-4;

  /** One data set; the intercepts of its groups are the latents. */
  private static final class Model {
    private final List<String[]> rows;
    private final Map<String, Integer> groups = new LinkedHashMap<>();

    private Model(String name) throws Exception {
      rows = PublishedRows.of("random-intercept/" + name + ".csv");
      rows.forEach(row -> groups.computeIfAbsent(row[0], each -> groups.size()));
    }

    /** The fit for fixed effects, and the logarithm of the SD behind them. */
    private LaplaceFit fit(double[] parameters) {
      int[] sizes = new int[groups.size()];
      Arrays.fill(sizes, 1);
      BlockMatrix precision = new BlockMatrix(new BlockGraph(sizes));
      for (int i = 0; i < sizes.length; i++) {
        precision.add(i, i, Math.exp(-2 * parameters[FIXED]));
      }
      List<Term> terms = new ArrayList<>();
      for (String[] row : rows) {
        double hits = Double.parseDouble(row[1]);
        SparseRow sum = new SparseRow().plus(groups.getOrDefault(row[0], -1), 1);
        for (int i = 0; i < FIXED; i++) {
          sum.plusOffset(parameters[i] * Double.parseDouble(row[3 + i]));
        }
        terms.add(new Term(new BinomialLikelihood(hits, Double.parseDouble(row[2]) - hits), sum));
      }
      return LaplaceFit.of(GaussianPrior.of(new double[sizes.length], precision), terms);
    }

    private double logLikelihood(double[] parameters) {
      return fit(parameters).logEvidence() + binomials();
    }

    private double binomials() {
      double sum = 0;
      for (String[] row : rows) {
        int hits = Integer.parseInt(row[1]);
        int size = Integer.parseInt(row[2]);
        for (int i = 1; i <= hits; i++) {
          sum += Math.log((size - hits + i) / (double) i);
        }
      }
      return sum;
    }

    private double withSlope(double[] parameters, double[] slope) {
      for (int i = 0; i < parameters.length; i++) {
        double[] up = parameters.clone();
        double[] down = parameters.clone();
        up[i] += STEP;
        down[i] -= STEP;
        slope[i] = (logLikelihood(up) - logLikelihood(down)) / (2 * STEP);
      }
      return logLikelihood(parameters);
    }
  }

  private static Map<String, String[]> expected(String name) throws Exception {
    Map<String, String[]> expected = new LinkedHashMap<>();
    PublishedRows.of("random-intercept/" + name + "-expected.csv")
        .forEach(row -> expected.put(row[0], row));
    return expected;
  }

  @ParameterizedTest
  @ValueSource(strings = {"cbpp", "seeds"})
  void searchFromAFarStart_findsThePublishedLaplaceOptimum(String name) throws Exception {
    Model model = new Model(name);
    double[] start = {-0.5, 0, 0, 0, Math.log(0.5)};
    double[] top = new QuasiNewton(model::withSlope, 200, 1e-14).topFrom(start);
    Map<String, String[]> expected = expected(name);
    for (int i = 0; i < FIXED; i++) {
      assertThat(top[i]).isCloseTo(value(expected, "x" + (i + 1)), within(1e-5));
    }
    assertThat(Math.exp(top[FIXED])).isCloseTo(value(expected, "sd"), within(1e-5));
    assertThat(model.logLikelihood(top)).isCloseTo(value(expected, "logLik"), within(1e-7));
  }

  private static double value(Map<String, String[]> expected, String name) {
    return Double.parseDouble(expected.getOrDefault(name, new String[2])[1]);
  }

  @Test
  void modesOfTheHerds_atTheOptimum_areThePublishedOnes() throws Exception {
    Model model = new Model("cbpp");
    Map<String, String[]> expected = expected("cbpp");
    double[] at = new double[FIXED + 1];
    for (int i = 0; i < FIXED; i++) {
      at[i] = value(expected, "x" + (i + 1));
    }
    at[FIXED] = Math.log(value(expected, "sd"));
    LaplaceFit fit = model.fit(at);
    int seen = 0;
    for (Map.Entry<String, Integer> herd : model.groups.entrySet()) {
      double[] unit = new double[model.groups.size()];
      unit[herd.getValue()] = 1;
      String name = "b" + herd.getKey();
      double sd = Math.sqrt(fit.factor().solve(unit)[herd.getValue()]);
      assertThat(fit.mode()[herd.getValue()]).isCloseTo(value(expected, name), within(1e-6));
      double publishedSd = Double.parseDouble(expected.getOrDefault(name, new String[3])[2]);
      assertThat(sd).isCloseTo(publishedSd, within(1e-6));
      seen++;
    }
    assertThat(seen).isEqualTo(15);
  }
}
