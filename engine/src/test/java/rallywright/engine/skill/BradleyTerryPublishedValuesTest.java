package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bradley–Terry models through the same core; sources in published/bradley-terry/README.md. */
class BradleyTerryPublishedValuesTest {
  private static final double NEARLY_FLAT = 1e4;
  private static final String HOME = "home";

  @ParameterizedTest
  @CsvSource({"map-home-0.5, 0.5, 10", "map-home-1, 1, 10", "map-0.5, 0.5, 0"})
  void baseball_withGaussianPrior_hasPublishedModes(String name, double sd, double homeSd)
      throws Exception {
    Model model = baseball(sd, homeSd);
    int seen = 0;
    for (String[] row : expected("baseball-1987-expected.csv", name)) {
      double found =
          switch (row[1]) {
            case "logLik" -> model.fit.logLikelihood();
            case "logDet" -> model.fit.factor().logDet();
            default -> model.value(row[1]);
          };
      assertThat(found).as(row[1]).isCloseTo(Double.parseDouble(row[2]), within(1e-6));
      if (row.length > 3) {
        assertThat(model.sd(row[1])).isCloseTo(Double.parseDouble(row[3]), within(1e-6));
      }
      seen++;
    }
    assertThat(seen).isGreaterThanOrEqualTo(7);
  }

  @ParameterizedTest
  @CsvSource({"mle, 0, 6", "mle-home, 10000, 7"})
  void baseball_withNearlyFlatPrior_hasMaximumLikelihood(String name, double homeSd, int rows)
      throws Exception {
    Model model = baseball(NEARLY_FLAT, homeSd);
    int seen = 0;
    for (String[] row : expected("baseball-1987-expected.csv", name)) {
      String parameter = row[1].equals("at.home") ? HOME : row[1] + "-Baltimore";
      assertThat(model.value(parameter)).isCloseTo(Double.parseDouble(row[2]), within(1e-6));
      assertThat(model.sd(parameter)).isCloseTo(Double.parseDouble(row[3]), within(1e-6));
      seen++;
    }
    assertThat(seen).isEqualTo(rows);
  }

  @Test
  void doubles_withGaussianPrior_hasReferenceModes() throws Exception {
    Model model = doubles(0.5);
    for (String[] row : rows("doubles-expected.csv")) {
      assertThat(model.value(row[0])).isCloseTo(Double.parseDouble(row[3]), within(1e-6));
      assertThat(model.sd(row[0])).isCloseTo(Double.parseDouble(row[4]), within(1e-6));
    }
  }

  @Test
  void doubles_withNearlyFlatPrior_hasMaximumLikelihood() throws Exception {
    Model model = doubles(NEARLY_FLAT);
    for (String[] row : rows("doubles-expected.csv")) {
      if (!row[0].equals("6")) {
        assertThat(model.value(row[0] + "-6")).isCloseTo(Double.parseDouble(row[1]), within(1e-6));
        assertThat(model.sd(row[0] + "-6")).isCloseTo(Double.parseDouble(row[2]), within(1e-6));
      }
    }
  }

  private static Model baseball(double sd, double homeSd) throws Exception {
    Model model = new Model();
    List<String[]> games = rows("baseball-1987.csv");
    games.forEach(game -> model.latent(game[0]));
    List<Term> terms = new ArrayList<>();
    for (String[] game : games) {
      SparseRow row =
          new SparseRow().plus(model.latent(game[0]), 1).plus(model.latent(game[1]), -1);
      if (homeSd > 0) {
        row.plus(model.latent(HOME), 1);
      }
      terms.add(
          new Term(
              new BinomialLikelihood(Double.parseDouble(game[2]), Double.parseDouble(game[3])),
              row));
    }
    model.fit(terms, sd, homeSd);
    return model;
  }

  private static Model doubles(double sd) throws Exception {
    Model model = new Model();
    List<Term> terms = new ArrayList<>();
    for (String[] game : rows("doubles.csv")) {
      double won = Double.parseDouble(game[4]);
      terms.add(
          new Term(
              new BinomialLikelihood(won, Double.parseDouble(game[5]) - won),
              new SparseRow()
                  .plus(model.latent(game[0]), 1)
                  .plus(model.latent(game[1]), 1)
                  .plus(model.latent(game[2]), -1)
                  .plus(model.latent(game[3]), -1)));
    }
    model.fit(terms, sd, sd);
    return model;
  }

  private static List<String[]> expected(String file, String name) throws Exception {
    return rows(file).stream().filter(row -> row[0].equals(name)).toList();
  }

  private static List<String[]> rows(String file) throws Exception {
    String path = "/published/bradley-terry/" + file;
    try (InputStream in = BradleyTerryPublishedValuesTest.class.getResourceAsStream(path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.split(",", 0))
          .toList();
    }
  }

  /** Named latents, each a node of its own, and the fit over them. */
  private static final class Model {
    private final Map<String, Integer> latents = new LinkedHashMap<>();
    private LaplaceFit fit;

    int latent(String name) {
      return latents.computeIfAbsent(name, unused -> latents.size());
    }

    void fit(List<Term> terms, double sd, double homeSd) {
      int[] sizes = new int[latents.size()];
      Arrays.fill(sizes, 1);
      BlockMatrix precision = new BlockMatrix(new BlockGraph(sizes));
      latents.forEach(
          (name, i) -> {
            double own = name.equals(HOME) ? homeSd : sd;
            precision.add(i, i, 1 / (own * own));
          });
      fit = LaplaceFit.of(GaussianPrior.of(new double[sizes.length], precision), terms);
    }

    /** The row of a parameter, or of a difference "x-y". */
    private SparseRow row(String parameter) {
      String[] parts = parameter.split("-", 2);
      SparseRow row = new SparseRow().plus(latents.get(parts[0]), 1);
      return parts.length == 2 ? row.plus(latents.get(parts[1]), -1) : row;
    }

    double value(String parameter) {
      return row(parameter).dot(fit.mode());
    }

    double sd(String parameter) {
      SparseRow row = row(parameter);
      return Math.sqrt(row.dot(fit.factor().solve(row.dense(latents.size()))));
    }
  }
}
