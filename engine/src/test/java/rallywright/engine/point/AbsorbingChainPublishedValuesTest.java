package rallywright.engine.point;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.odds.PublishedTable;
import rallywright.engine.odds.PublishedTable.Row;

/** Textbook chains, the tennis game and a made-up rally, against tables with their pedigree. */
class AbsorbingChainPublishedValuesTest {

  private static final double EXACT = 1e-12;
  private static final double TWELVE_DIGITS = 1e-11;

  private static final List<String> STATES = List.of("S", "R", "D", "F4", "KA", "KB", "A", "B");

  /** The rows of the made-up rally; the columns are {@link #STATES}. */
  private static final double[][] RALLY = {
    {0, .94, 0, 0, 0, 0, .01, .05},
    {0, 0, .92, 0, 0, 0, .06, .02},
    {0, 0, 0, .80, 0, 0, .04, .16},
    {0, 0, 0, 0, .82, 0, .10, .08},
    {0, 0, 0, 0, 0, .80, .09, .11},
    {0, 0, 0, 0, .80, 0, .11, .09}
  };

  static Stream<Row> textbook() {
    return PublishedTable.read("absorbing-chains/textbook.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("textbook")
  void chain_ofTheTextbook_isReproduced(Row row) {
    boolean up = row.text("chain").equals("up");
    AbsorbingChain chain = up ? up() : walk(row.text("chain").equals("even") ? 0.5 : 2.0 / 3);
    int from = Integer.parseInt(row.text("from")) - 1;
    double found =
        switch (row.text("what")) {
          case "visits" -> chain.visits(from, Integer.parseInt(row.text("to")) - 1);
          case "steps" -> chain.steps(from);
          case "variance" -> chain.stepsVariance(from);
          default -> chain.exitChance(from, row.text("to").equals("0") ? 0 : 1);
        };
    assertThat(found).isCloseTo(row.number("value"), within(EXACT));
  }

  private static AbsorbingChain walk(double right) {
    double left = 1 - right;
    double[][] steps = {{0, right, 0}, {left, 0, right}, {0, left, 0}};
    double[][] exits = {{left, 0}, {0, 0}, {0, right}};
    return AbsorbingChain.of(steps, exits);
  }

  private static AbsorbingChain up() {
    double[][] steps = new double[4][4];
    double[][] exits = new double[4][1];
    for (int from = 0; from < 4; from++) {
      Arrays.fill(steps[from], from + 1, 4, 1.0 / (4 - from));
      exits[from][0] = 1.0 / (4 - from);
    }
    return AbsorbingChain.of(steps, exits);
  }

  /** A game of tennis with 15 scores before deuce, deuce and the two advantages. */
  @ParameterizedTest
  @MethodSource("tennis")
  void tennisGame_asAChain_isReproduced(Row row) {
    double p = row.number("p");
    int size = 16;
    double[][] steps = new double[size + 2][size + 2];
    double[][] exits = new double[size + 2][2];
    for (int server = 0; server < 4; server++) {
      for (int other = 0; other < 4; other++) {
        int from = 4 * server + other;
        boolean deuce = server == 3 && other == 3;
        add(deuce ? size : server < 3 ? from + 4 : -1, 0, p, steps[from], exits[from]);
        add(deuce ? size + 1 : other < 3 ? from + 1 : -1, 1, 1 - p, steps[from], exits[from]);
      }
    }
    exits[size][0] = p;
    steps[size][15] = 1 - p;
    steps[size + 1][15] = p;
    exits[size + 1][1] = 1 - p;
    AbsorbingChain chain = AbsorbingChain.of(steps, exits);
    assertThat(chain.exitChance(0, 0)).isCloseTo(row.number("game"), within(EXACT));
    assertThat(chain.exitChance(15, 0)).isCloseTo(row.number("fromDeuce"), within(EXACT));
    assertThat(chain.steps(0)).isCloseTo(row.number("points"), within(TWELVE_DIGITS));
  }

  static Stream<Row> tennis() {
    return PublishedTable.read("tennis-game/games.csv").stream();
  }

  private static void add(int next, int exit, double chance, double[] steps, double[] exits) {
    if (next >= 0) {
      steps[next] = chance;
    } else {
      exits[exit] = chance;
    }
  }

  static Stream<Row> rally() {
    return PublishedTable.read("absorbing-chains/rally.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("rally")
  void rally_withItsSlopes_isReproduced(Row row) {
    AbsorbingChain chain = chain(RALLY);
    int from = STATES.indexOf(row.text("from"));
    int to = STATES.indexOf(row.text("to"));
    double found =
        switch (row.text("what")) {
          case "win" -> chain.exitChance(from, 0);
          case "steps" -> chain.steps(from);
          case "variance" -> chain.stepsVariance(from);
          case "visits" -> chain.visits(from, to);
          default -> chain.slope(0, 0, change(from, to));
        };
    assertThat(found).isCloseTo(row.number("value"), within(TWELVE_DIGITS));
    if (row.text("what").equals("slope")) {
      double risen = chain(risen(from, to)).exitChance(0, 0);
      assertThat(risen - chain.exitChance(0, 0))
          .isCloseTo(row.number("exact"), within(TWELVE_DIGITS));
    }
  }

  private static AbsorbingChain chain(double[][] rows) {
    List<double[]> steps = new ArrayList<>();
    List<double[]> exits = new ArrayList<>();
    for (double[] row : rows) {
      steps.add(Arrays.copyOfRange(row, 0, 6));
      exits.add(Arrays.copyOfRange(row, 6, 8));
    }
    return AbsorbingChain.of(steps.toArray(new double[0][]), exits.toArray(new double[0][]));
  }

  private static AbsorbingChain.Change change(int from, int to) {
    double[] moves = new double[8];
    for (int i = 0; i < 8; i++) {
      moves[i] = i == to ? 1 : -RALLY[from][i] / (1 - RALLY[from][to]);
    }
    return new AbsorbingChain.Change(
        from,
        Arrays.stream(moves).limit(6).boxed().toList(),
        Arrays.stream(moves).skip(6).boxed().toList());
  }

  private static double[][] risen(int from, int to) {
    double[][] rows = Arrays.stream(RALLY).map(double[]::clone).toArray(double[][]::new);
    double shrink = (1 - RALLY[from][to] - 0.01) / (1 - RALLY[from][to]);
    for (int i = 0; i < 8; i++) {
      rows[from][i] = i == to ? RALLY[from][i] + 0.01 : RALLY[from][i] * shrink;
    }
    return rows;
  }

  @Test
  void chain_thatNeverEnds_isRefused() {
    assertThatThrownBy(
            () -> AbsorbingChain.of(new double[][] {{0, 1}, {1, 0}}, new double[][] {{0}, {0}}))
        .hasMessageContaining("need not end");
  }

  @Test
  void chain_withWrongRows_isRefused() {
    assertThatThrownBy(() -> AbsorbingChain.of(new double[][] {{0.5}}, new double[][] {{0.4}}))
        .hasMessageContaining("sum to 0.9");
    assertThatThrownBy(() -> AbsorbingChain.of(new double[][] {{Double.NaN}}, new double[][] {{1}}))
        .hasMessageContaining("(NaN) must lie from 0 to 1");
    assertThatThrownBy(() -> AbsorbingChain.of(new double[][] {{0, 0}}, new double[][] {{1}}))
        .hasMessageContaining("Row 0");
  }
}
